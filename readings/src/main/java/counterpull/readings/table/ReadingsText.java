package counterpull.readings.table;

import counterpull.readings.ReadingsReader;
import counterpull.readings.table.Conversion.Refused;
import counterpull.readings.table.Conversion.Taken;
import counterpull.readings.table.Sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Rows of a table as a file of readings: the person's own digits and units, what was refused at the end. */
public final class ReadingsText {
    private ReadingsText() {}

    /** The file as YAML. */
    public static String yaml(String from, ReadingsTable table, Conversion conversion) {
        StringBuilder out = new StringBuilder("format: " + ReadingsReader.FORMAT + "\n");
        YamlText.comment(out, List.of("From " + from + "."));
        List<Map<String, String>> rows =
                conversion.taken().stream().map(Taken::values).toList();
        YamlBlock.write(out, RowsTree.of(table, rows));
        YamlText.comment(out, kept(conversion));
        return out.toString();
    }

    private static List<String> kept(Conversion conversion) {
        List<String> lines = new ArrayList<>();
        if (!conversion.refused().isEmpty()) {
            lines.add("Refused, each with its whole row below:");
            conversion.refused().stream().map(Refused::line).forEach(lines::add);
            conversion.refused().stream().map(Refused::row).distinct().forEach(row -> lines.add(kept(row)));
        }
        if (!conversion.aside().isEmpty()) {
            lines.add("Beside the readings in the file:");
            conversion.aside().forEach(row -> lines.add(kept(row)));
        }
        if (!conversion.unused().isEmpty()) {
            lines.add("In columns that are not used:");
            lines.addAll(conversion.unused());
        }
        return lines;
    }

    private static String kept(Row row) {
        return "row " + row.line() + ": " + row.shown();
    }
}
