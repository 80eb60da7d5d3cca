package counterpull.readings.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stands between two cells. */
public enum Separator {
    TAB('\t', "tab"),
    SEMICOLON(';', "semicolon"),
    COMMA(',', "comma");

    private static final int LOOKED_AT = 200;
    private static final double CLEARLY = 0.1;

    private final char sign;
    private final String word;

    Separator(char sign, String word) {
        this.sign = sign;
        this.word = word;
    }

    char sign() {
        return sign;
    }

    /** Its name, as a mapping has it. */
    public String word() {
        return word;
    }

    /**
     * The one that cuts most lines into the same number of cells, two or more; where two do so about as well, a tab before a semicolon before a comma,
     * since a comma may stand inside numbers and words. Empty where none does.
     */
    static Optional<Separator> of(String text) {
        List<String> lines = lines(text);
        Separator best = null;
        double most = 0;
        for (Separator candidate : values()) {
            double share = candidate.share(lines);
            if (share > most + CLEARLY) {
                best = candidate;
                most = share;
            }
        }
        return Optional.ofNullable(best);
    }

    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\\R", LOOKED_AT + 1)) {
            if (!line.isBlank() && !line.startsWith("#") && lines.size() < LOOKED_AT) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** Share of the lines with the number of cells that most lines have. */
    private double share(List<String> lines) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (String line : lines) {
            int cells = cells(line);
            if (cells > 1) {
                counts.merge(cells, 1, Integer::sum);
            }
        }
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return lines.isEmpty() ? 0 : (double) most / lines.size();
    }

    private int cells(String line) {
        int cells = 1;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            quoted ^= line.charAt(i) == '"';
            cells += !quoted && line.charAt(i) == sign ? 1 : 0;
        }
        return cells;
    }
}
