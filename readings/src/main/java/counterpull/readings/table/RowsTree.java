package counterpull.readings.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a table as the groups and lists of a file of readings: maps, lists and texts. */
final class RowsTree {
    private final ReadingsTable table;

    private RowsTree(ReadingsTable table) {
        this.table = table;
    }

    static Map<String, Object> of(ReadingsTable table, List<Map<String, String>> rows) {
        Map<String, Object> file = new LinkedHashMap<>();
        new RowsTree(table).list(table.top(), rows, file);
        return file;
    }

    /** The rows of one list, grouped by what they say of its groups, in the order in which those come first. */
    private void list(Level level, List<Map<String, String>> rows, Map<String, Object> outer) {
        List<Object> items = new ArrayList<>();
        if (level.below().isEmpty()) {
            // two equal readings are two readings
            rows.forEach(row -> items.add(item(level, row)));
        } else {
            Map<Map<String, Object>, List<Map<String, String>>> groups = new LinkedHashMap<>();
            rows.forEach(row -> groups.computeIfAbsent(group(level, row), key -> new ArrayList<>())
                    .add(row));
            groups.forEach((own, inside) -> items.add(filled(level, own, inside)));
        }
        put(outer, level.path(), items);
    }

    private static Object item(Level level, Map<String, String> row) {
        for (Slot slot : level.slots()) {
            if (slot.path().isEmpty()) {
                return row.getOrDefault(slot.wanted().key(), "");
            }
        }
        return group(level, row);
    }

    private Map<String, Object> filled(Level level, Map<String, Object> own, List<Map<String, String>> rows) {
        // the key of the grouping stays as it is: what is filled is another one
        Map<String, Object> group = copied(own);
        for (Level inner : level.below()) {
            List<Map<String, String>> inside = rows.stream()
                    .filter(row -> level.next(table.which().of(row), row)
                            .filter(inner::equals)
                            .isPresent())
                    .toList();
            if (!inside.isEmpty()) {
                list(inner, inside, group);
            }
        }
        return group;
    }

    private static Map<String, Object> copied(Map<?, ?> group) {
        Map<String, Object> copy = new LinkedHashMap<>();
        group.forEach((key, value) ->
                copy.put(String.valueOf(key), value instanceof Map<?, ?> inner ? copied(inner) : value));
        return copy;
    }

    /** What a row says of a group of a list. */
    private static Map<String, Object> group(Level level, Map<String, String> row) {
        Map<String, Object> group = new LinkedHashMap<>();
        for (Slot slot : level.slots()) {
            String value = row.get(slot.wanted().key());
            if (value != null) {
                put(group, slot.path(), slot.form().of(value));
            }
        }
        return group;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> group, List<String> path, Object value) {
        Map<String, Object> at = group;
        for (String key : path.subList(0, path.size() - 1)) {
            at = (Map<String, Object>) at.computeIfAbsent(key, missing -> new LinkedHashMap<String, Object>());
        }
        at.put(path.get(path.size() - 1), value);
    }
}
