package counterpull.readings.table;

import counterpull.readings.ReadingsReader;
import counterpull.readings.table.Conversion.Refused;
import counterpull.readings.table.Conversion.Taken;
import counterpull.readings.table.Sheet.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows of a table as a file of readings: the person's own digits and units, each reading on a line, what was refused at the end. */
public final class ReadingsText {
    private final ReadingsTable table;
    private final StringBuilder out = new StringBuilder();

    private ReadingsText(ReadingsTable table) {
        this.table = table;
    }

    /** The file as YAML. */
    public static String yaml(String from, ReadingsTable table, Conversion conversion) {
        ReadingsText text = new ReadingsText(table);
        text.out.append("format: ").append(ReadingsReader.FORMAT).append('\n');
        YamlText.comment(text.out, List.of("From " + from + "."));
        List<Map<String, String>> rows =
                conversion.taken().stream().map(Taken::values).toList();
        text.list(table.top(), rows, "");
        text.kept(conversion);
        return text.out.toString();
    }

    /** The rows of one list, grouped by what they say of its groups, in the order in which those come first. */
    private void list(Level level, List<Map<String, String>> rows, String indent) {
        Map<Map<String, String>, List<Map<String, String>>> groups = new LinkedHashMap<>();
        int leaf = 0;
        for (Map<String, String> row : rows) {
            Map<String, String> own = own(level, row);
            if (level.below().isEmpty()) {
                // two equal readings are two readings
                own.put("", String.valueOf(leaf++));
            }
            groups.computeIfAbsent(own, key -> new ArrayList<>()).add(row);
        }
        String inner = open(level.path(), indent);
        for (Map.Entry<Map<String, String>, List<Map<String, String>>> group : groups.entrySet()) {
            Map<String, String> own = new LinkedHashMap<>(group.getKey());
            own.remove("");
            group(level, own, group.getValue(), inner);
        }
    }

    private static Map<String, String> own(Level level, Map<String, String> row) {
        Map<String, String> own = new LinkedHashMap<>();
        for (Slot slot : level.slots()) {
            String value = row.get(slot.wanted().key());
            if (value != null) {
                own.put(slot.wanted().key(), value);
            }
        }
        return own;
    }

    private String open(List<String> path, String indent) {
        String inner = indent;
        for (String key : path) {
            out.append(inner).append(YamlText.value(key)).append(":\n");
            inner += "  ";
        }
        return inner;
    }

    private void group(Level level, Map<String, String> own, List<Map<String, String>> rows, String indent) {
        if (level.below().isEmpty()) {
            out.append(indent).append("- ").append(oneLine(level, own)).append('\n');
            return;
        }
        String lead = indent + "- ";
        for (Map.Entry<String, Object> entry : tree(level, own).entrySet()) {
            out.append(lead)
                    .append(entry.getKey())
                    .append(": ")
                    .append(flow(entry.getValue()))
                    .append('\n');
            lead = indent + "  ";
        }
        for (Level inner : level.below()) {
            List<Map<String, String>> inside = rows.stream()
                    .filter(row -> level.next(row.getOrDefault(table.which(), ""), row)
                            .filter(inner::equals)
                            .isPresent())
                    .toList();
            if (!inside.isEmpty()) {
                list(inner, inside, indent + "  ");
            }
        }
    }

    private static String oneLine(Level level, Map<String, String> own) {
        Optional<Slot> itself =
                level.slots().stream().filter(slot -> slot.path().isEmpty()).findFirst();
        return itself.isPresent()
                ? YamlText.value(own.getOrDefault(itself.get().wanted().key(), ""))
                : flow(tree(level, own));
    }

    /** The group's values at their paths. */
    private static Map<String, Object> tree(Level level, Map<String, String> own) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Slot slot : level.slots()) {
            String value = own.get(slot.wanted().key());
            if (value != null) {
                put(tree, slot.path(), value);
            }
        }
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> tree, List<String> path, String value) {
        if (path.size() == 1) {
            tree.put(path.get(0), value);
        } else {
            Object inner = tree.computeIfAbsent(path.get(0), key -> new LinkedHashMap<String, Object>());
            put((Map<String, Object>) inner, path.subList(1, path.size()), value);
        }
    }

    private static String flow(Object value) {
        if (!(value instanceof Map<?, ?> group)) {
            return YamlText.value(String.valueOf(value));
        }
        List<String> entries = new ArrayList<>();
        group.forEach((key, inner) -> entries.add(YamlText.value(String.valueOf(key)) + ": " + flow(inner)));
        return "{ " + String.join(", ", entries) + " }";
    }

    private void kept(Conversion conversion) {
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
        YamlText.comment(out, lines);
    }

    private static String kept(Row row) {
        return "row " + row.line() + ": " + row.shown();
    }
}
