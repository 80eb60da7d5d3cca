package counterpull.readings.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows as CSV after RFC 4180: a unit stands in the heading where a whole column has it, else behind each number. Words that a spreadsheet
 * would run as a formula get an apostrophe in front, which the import takes off again.
 */
public final class TableText {
    private static final String END = "\r\n";
    private static final Pattern AMOUNT = Pattern.compile("([+-]?[\\d.]+(?:[eE][+-]?\\d+)?)\\s*(\\D.*)");

    private final ReadingsTable table;
    private final List<Map<String, String>> rows;

    private TableText(ReadingsTable table, List<Map<String, String>> rows) {
        this.table = table;
        this.rows = rows;
    }

    /** The rows under a heading line. */
    public static String csv(ReadingsTable table, List<Map<String, String>> rows) {
        return new TableText(table, rows).csv();
    }

    /** What the columns are: name, unit, meaning, what an empty cell means. */
    public static String dictionary(ReadingsTable table, List<Map<String, String>> rows) {
        TableText text = new TableText(table, rows);
        StringBuilder out = new StringBuilder();
        line(out, List.of("column", "unit", "holds", "empty_means"));
        for (Wanted wanted : text.used()) {
            line(out, List.of(wanted.key(), text.unit(wanted), wanted.due().inWords(), "not given"));
        }
        return out.toString();
    }

    private String csv() {
        StringBuilder out = new StringBuilder();
        List<Wanted> used = used();
        line(out, used.stream().map(this::heading).toList());
        Map<String, String> units = new LinkedHashMap<>();
        used.forEach(wanted -> units.put(wanted.key(), unit(wanted)));
        for (Map<String, String> row : rows) {
            List<String> cells = new ArrayList<>();
            used.forEach(
                    wanted -> cells.add(cell(wanted, row.getOrDefault(wanted.key(), ""), units.get(wanted.key()))));
            line(out, cells);
        }
        return out.toString();
    }

    private List<Wanted> used() {
        return table.columns().stream()
                .filter(wanted -> rows.stream().anyMatch(row -> row.containsKey(wanted.key())))
                .toList();
    }

    private String heading(Wanted wanted) {
        String unit = unit(wanted);
        return unit.isEmpty() || unit.equals(ColumnUse.IN_CELLS) ? wanted.key() : wanted.key() + " [" + unit + "]";
    }

    /** The unit that every value of the column has; that it stands in the cells where they differ. */
    private String unit(Wanted wanted) {
        if (!(wanted.due() instanceof Due.Amount)) {
            return "";
        }
        List<String> units = rows.stream()
                .map(row -> row.getOrDefault(wanted.key(), ""))
                .filter(value -> !value.isEmpty())
                .map(TableText::behind)
                .distinct()
                .toList();
        return units.size() == 1 ? units.get(0) : ColumnUse.IN_CELLS;
    }

    private static String behind(String value) {
        Matcher amount = AMOUNT.matcher(value);
        return amount.matches() ? amount.group(2) : "";
    }

    private static String cell(Wanted wanted, String value, String unit) {
        if (wanted.due() instanceof Due.Amount) {
            Matcher amount = AMOUNT.matcher(value);
            return !unit.equals(ColumnUse.IN_CELLS) && amount.matches() ? amount.group(1) : value;
        }
        return Guard.on(value);
    }

    private static void line(StringBuilder out, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(quoted(cells.get(i)));
        }
        out.append(END);
    }

    private static String quoted(String text) {
        boolean plain =
                text.indexOf(',') < 0 && text.indexOf('"') < 0 && text.indexOf('\n') < 0 && text.indexOf('\r') < 0;
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
