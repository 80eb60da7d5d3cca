package counterpull.picture;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines no wider than a column. */
final class Wrap {
    private Wrap() {}

    static List<String> lines(String words, double width, Lettering lettering) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (line.length() > 0 && TextSize.width(longer, lettering) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** As much of a line as fits, with an ellipsis where something was cut. */
    static String cut(String words, double width, Lettering lettering) {
        if (TextSize.width(words, lettering) <= width) {
            return words;
        }
        int end = words.length();
        while (end > 1 && TextSize.width(words.substring(0, end) + "…", lettering) > width) {
            end--;
        }
        return words.substring(0, end).trim() + "…";
    }
}
