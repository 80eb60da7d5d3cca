package counterpull.report.table;

import java.util.List;

/**
 * Tables as CSV after RFC 4180: a header line, CRLF line ends, quotes around what needs them. The header carries the unit in
 * square brackets. A text cell that a spreadsheet would run as a formula gets an apostrophe in front.
 */
public final class Csv {
    private static final String END = "\r\n";
    private static final String RUNS_AS_FORMULA = "=+-@\t\r";

    private Csv() {}

    /** The table's cells with every digit. */
    public static String of(Table table, UnitSet units) {
        StringBuilder out = new StringBuilder();
        line(out, table.columns().stream().map(column -> header(column, units)).toList());
        for (int row = 0; row < table.rows(); row++) {
            int at = row;
            line(
                    out,
                    table.columns().stream()
                            .map(column -> cell(column, at, units))
                            .toList());
        }
        return out.toString();
    }

    /** What the table's columns are: key, name, unit, meaning. */
    public static String dictionary(Table table, UnitSet units) {
        StringBuilder out = new StringBuilder();
        line(out, List.of("column", "name", "unit", "meaning", "empty_means"));
        for (Column column : table.columns()) {
            Column.Head head = column.head();
            String empty = column.numeric() ? "not known" : "nothing to say";
            line(out, List.of(head.key(), head.title(), column.unit(units), head.meaning(), empty));
        }
        return out.toString();
    }

    private static String header(Column column, UnitSet units) {
        String unit = column.unit(units);
        return column.head().key() + (unit.isEmpty() ? "" : " [" + unit + "]");
    }

    private static String cell(Column column, int row, UnitSet units) {
        String text = column.exact(row, units);
        boolean formula = !column.numeric() && !text.isEmpty() && RUNS_AS_FORMULA.indexOf(text.charAt(0)) >= 0;
        return formula ? "'" + text : text;
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
