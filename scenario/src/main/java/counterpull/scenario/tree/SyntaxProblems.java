package counterpull.scenario.tree;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Key;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Says in plain words what a parser could not read, and where. */
final class SyntaxProblems {
    private static final int LONGEST_REASON = 120;
    private static final String LOOK = "Look at this line and the one above: a colon and a space after each key, equal "
            + "indentation, quotes and brackets closed";
    private static final String CUT_OFF = "Is it cut off, or is a closing quote, bracket or brace missing?";

    private final String file;
    private final String text;
    private final Problems problems;

    SyntaxProblems(String file, String text, Problems problems) {
        this.file = file;
        this.text = text;
        this.problems = problems;
    }

    /** Reports the first tab that indents a line of YAML; true if there is one. */
    boolean tabs() {
        int line = 1;
        for (String content : (Iterable<String>) text.lines()::iterator) {
            int column = indentingTab(content);
            if (column > 0) {
                add(Code.TAB, new Spot(line, column), "a tab indents this line", "Indent with spaces");
                return true;
            }
            line++;
        }
        return false;
    }

    /** The column of a tab before the line's first other character; 0 if there is none. */
    private static int indentingTab(String line) {
        int column = 0;
        while (column < line.length() && line.charAt(column) == ' ') {
            column++;
        }
        return column < line.length() && line.charAt(column) == '\t' && !line.isBlank() ? column + 1 : 0;
    }

    /** Reports what a parser threw. */
    void report(Exception broken) {
        if (broken instanceof JsonParseException end && endsEarly(end)) {
            add(Code.TRUNCATED, spot(end.getLocation()), "the file ends in the middle", CUT_OFF);
        } else if (marked(broken) != null) {
            yaml(marked(broken));
        } else if (String.valueOf(broken.getMessage()).contains("special characters")) {
            add(Code.NOT_TEXT, new Spot(0, 0), "it holds a sign that is no text", "Save it as plain text in UTF-8");
        } else if (broken instanceof JsonProcessingException parsing) {
            add(Code.SYNTAX, spot(parsing.getLocation()), "this cannot be read: " + reason(parsing), LOOK);
        } else {
            add(Code.SYNTAX, new Spot(0, 0), "this cannot be read", LOOK);
        }
    }

    private static boolean endsEarly(JsonParseException broken) {
        return broken instanceof JsonEOFException
                || String.valueOf(broken.getOriginalMessage()).contains("end-of-input");
    }

    private static MarkedYAMLException marked(Throwable broken) {
        Throwable at = broken;
        while (at != null && !(at instanceof MarkedYAMLException)) {
            at = at.getCause();
        }
        return (MarkedYAMLException) at;
    }

    private void yaml(MarkedYAMLException broken) {
        String problem = String.valueOf(broken.getProblem());
        boolean ends = problem.contains("end of stream") || problem.contains("<stream end>");
        if (ends) {
            Mark from = broken.getContextMark() == null ? broken.getProblemMark() : broken.getContextMark();
            add(Code.TRUNCATED, spot(from), "what begins here is not closed before the file ends", CUT_OFF);
        } else {
            add(Code.SYNTAX, spot(broken.getProblemMark()), inWords(problem), LOOK);
        }
    }

    private static String inWords(String problem) {
        if (problem.contains("mapping values are not allowed")) {
            return "a second colon here cannot be read: one key a line, and texts with a colon in quotes";
        }
        if (problem.contains("cannot start any token")) {
            return "a value cannot begin with this sign unless it stands in quotes";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a key without a colon";
        }
        if (problem.contains("expected <block end>")) {
            return "this line does not fit the indentation of those above";
        }
        return "this cannot be read: " + Shown.shortened(problem, LONGEST_REASON);
    }

    private static String reason(JsonProcessingException broken) {
        String message = String.valueOf(broken.getOriginalMessage())
                .replaceAll("\\s*\\(code [^)]*\\)", "")
                .replaceAll("\\((?:for|not recognized|was expecting|from|starting|\\d+, from)\\b.*", "")
                .replaceAll(": was expecting \\(.*", "")
                .replaceAll("Expected a field name .*", "a key must be a plain word")
                .replaceAll("\\s+", " ");
        return Shown.shortened(message.strip(), LONGEST_REASON);
    }

    private record Spot(int line, int column) {}

    private static Spot spot(Mark mark) {
        return mark == null ? new Spot(0, 0) : new Spot(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static Spot spot(JsonLocation location) {
        return location == null || location.getLineNr() < 1
                ? new Spot(0, 0)
                : new Spot(location.getLineNr(), Math.max(0, location.getColumnNr()));
    }

    private void add(Code code, Spot spot, String message, String hint) {
        problems.add(Problem.of(code, new Place(file, spot.line(), spot.column(), Key.TOP), message, hint));
    }
}
