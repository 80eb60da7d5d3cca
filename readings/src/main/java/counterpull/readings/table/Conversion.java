package counterpull.readings.table;

import counterpull.readings.table.Sheet.Row;
import counterpull.scenario.problem.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sheet read as its mapping says: the rows that can be used, and everything that cannot, each with its reason.
 *
 * @param taken rows as files of readings have them
 * @param refused cells and rows that cannot be used
 * @param aside what stands before the headings, and comments: never read, never lost
 * @param unused cells of columns that are not used, in rows that are
 */
public record Conversion(List<Taken> taken, List<Refused> refused, List<Row> aside, List<String> unused) {
    public Conversion {
        unused = List.copyOf(unused);
        taken = List.copyOf(taken);
        refused = List.copyOf(refused);
        aside = List.copyOf(aside);
    }

    /**
     * A row that can be used.
     *
     * @param line where it stands in the file
     * @param values its values by key
     */
    public record Taken(int line, Map<String, String> values) {
        public Taken {
            values = new LinkedHashMap<>(values);
        }

        /** A value; empty where the row has none. */
        public Optional<String> value(String key) {
            return Optional.ofNullable(values.get(key));
        }
    }

    /**
     * A cell or a row that cannot be used.
     *
     * @param row the whole row
     * @param where which cell, in words; empty where the whole row is meant
     * @param text what stands there
     * @param why a sentence without a full stop
     */
    public record Refused(Row row, String where, String text, String why) {
        /** On one line: row, column, text and why. */
        public String line() {
            String place = "row " + row.line() + (where.isEmpty() ? "" : ", " + where);
            return place + ": \"" + Shown.shortened(text) + "\": " + why;
        }
    }

    /** Reads the rows; a mapping with open questions is read as far as it goes. */
    public static Conversion of(Grid grid, Mapping mapping) {
        List<Taken> taken = new ArrayList<>();
        List<Refused> refused = new ArrayList<>();
        List<String> unused = new ArrayList<>();
        RowReader.Plan plan = RowReader.Plan.of(mapping);
        for (Row row : grid.data()) {
            RowReader reader = RowReader.read(row, plan);
            if (reader.refused().isEmpty()) {
                taken.add(new Taken(row.line(), reader.values()));
                unused.addAll(reader.unused());
            }
            refused.addAll(reader.refused());
        }
        return new Conversion(taken, refused, grid.aside(), unused);
    }
}
