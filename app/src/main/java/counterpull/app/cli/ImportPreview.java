package counterpull.app.cli;

import counterpull.readings.table.ColumnUse;
import counterpull.readings.table.Conversion;
import counterpull.readings.table.Conversion.Refused;
import counterpull.readings.table.Conversion.Taken;
import counterpull.readings.table.Mapping;
import counterpull.readings.table.Sheet;
import counterpull.readings.table.Wanted;
import counterpull.report.table.Column;
import counterpull.report.table.Table;
import counterpull.report.table.TextTable;
import counterpull.report.table.UnitSet;
import counterpull.report.table.WordColumn;
import counterpull.report.table.Wrap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a table of readings seems to be, and what would become of its rows. */
final class ImportPreview {
    private static final int SHOWN = 5;
    private static final int REFUSED_SHOWN = 50;

    private final Sheet sheet;
    private final Mapping mapping;
    private final Conversion conversion;
    private final StringBuilder out = new StringBuilder();

    ImportPreview(Sheet sheet, Mapping mapping, Conversion conversion) {
        this.sheet = sheet;
        this.mapping = mapping;
        this.conversion = conversion;
    }

    /** The whole preview. */
    String text(List<String> questions) {
        say(sheet.file() + ": " + conversion.taken().size() + " rows can be used"
                + (questions.isEmpty() ? "" : " so far") + " and " + refusedRows()
                + " cannot. Cells are parted by"
                + " a " + sheet.separator().word() + ", decimals by a "
                + mapping.decimals().map(sign -> sign.word()).orElse("sign that is not known yet") + "; "
                + (mapping.lines().headings() == 0
                        ? "no row holds headings."
                        : "headings stand in row " + mapping.lines().headings() + "."));
        out.append('\n').append(TextTable.of(columns(), UnitSet.METRIC, Output.width()));
        whole();
        rows();
        refused();
        asked(questions);
        return out.toString();
    }

    private long refusedRows() {
        return conversion.refused().stream().map(Refused::row).distinct().count();
    }

    private Table columns() {
        List<ColumnUse> uses = mapping.columns();
        return new Table(
                "Which column is what",
                List.of(
                        words("column", uses, use -> String.valueOf(use.number())),
                        words("heading", uses, ColumnUse::heading),
                        words("is", uses, use -> use.means().map(Wanted::key).orElse("not used")),
                        words("unit", uses, ColumnUse::unit),
                        words(
                                "sign",
                                uses,
                                use -> use.unit().isEmpty() ? "" : use.sign().word())),
                1);
    }

    private static <T> Column words(String title, List<T> rows, Function<T, String> word) {
        return new WordColumn(
                new Column.Head(title, title, title), rows.stream().map(word).toList());
    }

    private void whole() {
        mapping.whole().forEach((key, value) -> say("For every row, " + key + ": " + value));
    }

    private void rows() {
        if (conversion.taken().isEmpty()) {
            return;
        }
        out.append("\nThe first rows, as read and as they would be written:\n");
        for (Taken taken : conversion.taken().stream().limit(SHOWN).toList()) {
            String read = sheet.rows().stream()
                    .filter(row -> row.line() == taken.line())
                    .map(row -> String.join(" | ", row.cells()))
                    .findFirst()
                    .orElse("");
            String written = taken.values().entrySet().stream()
                    .filter(entry -> !mapping.whole().containsKey(entry.getKey()))
                    .map(entry -> entry.getKey() + " " + entry.getValue())
                    .collect(Collectors.joining(", "));
            out.append("  row ")
                    .append(taken.line())
                    .append(": ")
                    .append(read)
                    .append("  →  ")
                    .append(written)
                    .append('\n');
        }
    }

    private void refused() {
        List<String> lines = new ArrayList<>(conversion.refused().stream()
                .limit(REFUSED_SHOWN)
                .map(Refused::line)
                .toList());
        if (conversion.refused().size() > REFUSED_SHOWN) {
            lines.add("and " + (conversion.refused().size() - REFUSED_SHOWN) + " more");
        }
        list("Refused:", lines);
        list(
                "Kept as comments and not read:",
                conversion.aside().stream()
                        .map(row -> "row " + row.line() + ": " + row.joined(sheet.separator()))
                        .limit(REFUSED_SHOWN)
                        .toList());
    }

    private void asked(List<String> questions) {
        list(
                "Questions; answer them in the mapping (--write-mapping writes one):",
                questions.stream()
                        .map(question -> question.endsWith("?") ? question : question + ".")
                        .toList());
    }

    private void list(String head, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.append('\n').append(head).append('\n');
        lines.forEach(line -> out.append(
                Wrap.block("  " + Character.toUpperCase(line.charAt(0)) + line.substring(1), Output.width(), "  ")));
    }

    private void say(String sentence) {
        out.append(Wrap.block(sentence, Output.width(), ""));
    }
}
