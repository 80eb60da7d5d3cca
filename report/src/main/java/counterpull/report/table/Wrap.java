package counterpull.report.table;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at spaces. */
public final class Wrap {
    private Wrap() {}

    /** Lines of at most {@code width} characters; a longer word keeps a line of its own. */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split(" +")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The text in lines, each after an indent. */
    public static String block(String text, int width, String indent) {
        StringBuilder out = new StringBuilder();
        for (String line : lines(text, width - indent.length())) {
            out.append(indent).append(line).append('\n');
        }
        return out.toString();
    }
}
