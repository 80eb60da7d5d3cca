package counterpull.readings.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What parts the whole from its fraction in a file's numbers. */
public enum DecimalSign {
    POINT("point"),
    COMMA("comma");

    private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d*\\.\\d+(?:[eE][+-]?\\d+)?(?:\\s*\\D.*)?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d*,\\d+(?:[eE][+-]?\\d+)?(?:\\s*\\D.*)?");
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}(?:,\\d{3})+(?:\\s*\\D.*)?");

    private final String word;

    DecimalSign(String word) {
        this.word = word;
    }

    /** Its name, as a mapping has it. */
    public String word() {
        return word;
    }

    /**
     * The one that these cells use; empty where that cannot be told: both occur equally often, or every comma could part thousands just as
     * well. Cells without either tell nothing, and without any the point is taken.
     */
    static Optional<DecimalSign> of(List<String> cells) {
        long points = cells.stream()
                .filter(cell -> WITH_POINT.matcher(cell).matches())
                .count();
        List<String> commas = cells.stream()
                .filter(cell -> WITH_COMMA.matcher(cell).matches())
                .toList();
        if (points == commas.size() && points > 0) {
            return Optional.empty();
        }
        if (points > commas.size() || commas.isEmpty()) {
            return Optional.of(POINT);
        }
        boolean thousands =
                commas.stream().allMatch(cell -> THOUSANDS.matcher(cell).matches());
        return thousands ? Optional.empty() : Optional.of(COMMA);
    }

    /** A number of this kind with a point, its other digits untouched; empty where the other sign stands in it. */
    Optional<String> withPoint(String number) {
        boolean point = number.indexOf('.') >= 0;
        boolean comma = number.indexOf(',') >= 0;
        if (this == POINT) {
            return comma ? Optional.empty() : Optional.of(number);
        }
        return point ? Optional.empty() : Optional.of(number.replace(',', '.'));
    }
}
