package counterpull.readings.table;

import counterpull.readings.table.Mapping.Standing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a mapping as a small file that a person edits and confirms. */
public final class MappingWriter {
    private static final int LONGEST_HEADING = 80;

    private MappingWriter() {}

    /** The mapping as YAML, its questions as comments at the top. */
    public static String yaml(Mapping mapping, List<String> questions) {
        StringBuilder out = new StringBuilder("format: " + MappingReader.FORMAT + "\n");
        YamlText.comment(out, List.of("Look every line over; then write \"confirmed: yes\"."));
        questions.forEach(question -> YamlText.comment(out, List.of("Question: " + question)));
        out.append("confirmed: ")
                .append(mapping.standing() == Standing.CONFIRMED ? "yes" : "no")
                .append('\n');
        out.append("as: ").append(mapping.kind().word()).append('\n');
        out.append("heading row: ").append(mapping.lines().headings()).append('\n');
        out.append("units row: ").append(mapping.lines().units()).append('\n');
        String decimals = mapping.decimals().map(DecimalSign::word).orElse(Mapping.OPEN);
        out.append("decimals: ").append(YamlText.value(decimals)).append('\n');
        out.append("columns:\n");
        mapping.columns()
                .forEach(use ->
                        out.append("  - ").append(YamlText.group(column(use))).append('\n'));
        whole(mapping, out);
        return out.toString();
    }

    private static Map<String, String> column(ColumnUse use) {
        Map<String, String> group = new LinkedHashMap<>();
        group.put("column", String.valueOf(use.number()));
        // a heading too long for a value is left out: the column is known by its number
        if (!use.heading().isEmpty() && use.heading().length() <= LONGEST_HEADING) {
            group.put("heading", use.heading());
        }
        group.put("is", use.means().map(Wanted::key).orElse(MappingReader.NOTHING));
        if (!use.unit().isEmpty()) {
            group.put("unit", use.unit());
        }
        if (use.means().filter(wanted -> wanted.due() instanceof Due.Amount).isPresent()) {
            group.put("sign", use.sign().word());
        }
        return group;
    }

    private static void whole(Mapping mapping, StringBuilder out) {
        if (!mapping.whole().isEmpty()) {
            out.append("whole file:\n");
        }
        mapping.whole()
                .forEach((key, value) -> out.append("  ")
                        .append(key)
                        .append(": ")
                        .append(YamlText.value(value))
                        .append("   # ")
                        .append(mapping.kind().column(key).orElseThrow().due().inWords())
                        .append('\n'));
        for (Wanted wanted : mapping.kind().columns()) {
            if (mapping.column(wanted).isEmpty() && !mapping.whole().containsKey(wanted.key())) {
                String use = (mapping.whole().isEmpty() ? "whole file: may say " : "  may say ");
                out.append("# ")
                        .append(use)
                        .append(wanted.key())
                        .append(": ")
                        .append(wanted.due().inWords())
                        .append('\n');
            }
        }
    }
}
