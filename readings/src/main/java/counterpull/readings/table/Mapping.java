package counterpull.readings.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which column of a file is what, as a person confirms it.
 *
 * @param kind what the rows are
 * @param standing whether a person has said that it is right
 * @param lines where the headings stand
 * @param decimals what parts a number's fraction; empty where that is an open question
 * @param columns one for each column of the file
 * @param whole what holds for every row, by key, as a file of readings has it
 */
public record Mapping(
        TableKind kind,
        Standing standing,
        Lines lines,
        Optional<DecimalSign> decimals,
        List<ColumnUse> columns,
        Map<String, String> whole) {
    /** What stands where a person has to answer. */
    public static final String OPEN = "?";

    public Mapping {
        columns = List.copyOf(columns);
        whole = new LinkedHashMap<>(whole);
    }

    /** Whether a person has said that a mapping is right. */
    public enum Standing {
        PROPOSED,
        CONFIRMED
    }

    /**
     * Where the headings stand.
     *
     * @param headings their line, 0 for none
     * @param units the line of the units below them, 0 for none
     */
    public record Lines(int headings, int units) {}

    /** The column that is that. */
    Optional<ColumnUse> column(Wanted wanted) {
        return columns.stream()
                .filter(use -> use.means().filter(wanted::equals).isPresent())
                .findFirst();
    }
}
