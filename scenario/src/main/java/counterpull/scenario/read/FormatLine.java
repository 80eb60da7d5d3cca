package counterpull.scenario.read;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Key;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import java.util.Optional;

/** The line with which every file says its format. */
public final class FormatLine {
    /** Its key. */
    public static final String KEY = "format";

    private FormatLine() {}

    /** Reports a file that does not say its format, or says another one. */
    public static void check(MapNode file, String format, Problems problems) {
        Optional<Node> said = file.get(KEY);
        if (said.isEmpty()) {
            Place place = file.place().at(Key.TOP.key(KEY));
            problems.add(Problem.of(
                    Code.MISSING_KEY,
                    place,
                    "the file does not say its format",
                    "Begin with \"format: " + format + "\""));
        } else if (said.get() instanceof TextNode text && !text.text().equals(format)) {
            problems.add(new Problem(
                    Code.UNKNOWN_FORMAT,
                    text.place(),
                    new Found(text.text(), "", format),
                    "this format is not known here",
                    "This program reads \"" + format + "\""));
        } else if (!(said.get() instanceof TextNode)) {
            problems.add(Problem.of(
                    Code.WRONG_KIND, said.get().place(), "the format is one word", "Write \"" + format + "\""));
        }
    }
}
