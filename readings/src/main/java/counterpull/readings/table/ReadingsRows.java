package counterpull.readings.table;

import counterpull.scenario.tree.Node;
import counterpull.scenario.tree.Node.Entry;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A file of readings as rows of a table, texts as the person wrote them.
 *
 * @param rows values by the table's keys
 * @param leftOut keys of the file that the table has no column for
 */
public record ReadingsRows(List<Map<String, String>> rows, List<String> leftOut) {
    public ReadingsRows {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /** The rows of the file's subjects of that kind; none where it has none. */
    public static ReadingsRows of(MapNode file, ReadingsTable table) {
        Walk walk = new Walk(table);
        walk.list(file, table.top(), Map.of());
        return new ReadingsRows(walk.rows, List.copyOf(walk.leftOut));
    }

    private static final class Walk {
        private final ReadingsTable table;
        private final List<Map<String, String>> rows = new ArrayList<>();
        private final Set<String> leftOut = new LinkedHashSet<>();

        Walk(ReadingsTable table) {
            this.table = table;
        }

        void list(MapNode outer, Level level, Map<String, String> above) {
            Optional<Node> found = at(outer, level.path());
            if (found.isEmpty() || !(found.get() instanceof ListNode list)) {
                return;
            }
            list.items().forEach(item -> item(item, level, above));
        }

        private void item(Node item, Level level, Map<String, String> above) {
            Map<String, String> row = new LinkedHashMap<>(above);
            if (!level.name().isEmpty()) {
                row.put(table.which().key(), level.name());
            }
            for (Slot slot : level.slots()) {
                Optional<Node> value = item instanceof MapNode group
                        ? at(group, slot.path())
                        : slot.path().isEmpty() ? Optional.of(item) : Optional.empty();
                value.filter(TextNode.class::isInstance)
                        .ifPresent(node -> row.put(slot.wanted().key(), ((TextNode) node).text()));
            }
            if (item instanceof MapNode group) {
                leftOut(group, level);
                for (Level below : level.below()) {
                    list(group, below, row);
                }
            }
            if (level.below().isEmpty()) {
                rows.add(row);
            }
        }

        /** Keys that neither a slot nor a list inside goes through. */
        private void leftOut(MapNode group, Level level) {
            List<List<String>> paths = new ArrayList<>();
            level.slots().forEach(slot -> paths.add(slot.path()));
            level.below().forEach(below -> paths.add(below.path()));
            leftOut(group, paths);
        }

        private void leftOut(MapNode group, List<List<String>> paths) {
            for (Entry entry : group.entries()) {
                List<List<String>> through = paths.stream()
                        .filter(path -> !path.isEmpty() && path.get(0).equals(entry.key()))
                        .map(path -> path.subList(1, path.size()))
                        .toList();
                if (through.isEmpty()) {
                    leftOut.add(String.valueOf(entry.place().key()));
                } else if (entry.value() instanceof MapNode inner) {
                    leftOut(inner, through);
                }
            }
        }

        private static Optional<Node> at(MapNode group, List<String> path) {
            Optional<Node> node = Optional.of(group);
            for (String key : path) {
                node = node.filter(MapNode.class::isInstance).flatMap(inner -> ((MapNode) inner).get(key));
            }
            return path.isEmpty() ? Optional.empty() : node;
        }
    }
}
