package counterpull.readings.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A list in a file of readings: what each of its groups holds, and the lists inside it. A table's row goes down one way through the lists;
 * rows that say the same of an outer group share it.
 *
 * @param path keys from the group outside to the list
 * @param name which of several lists a row belongs to, as the table's column for that says it; empty where there is but one
 * @param slots what a group of the list holds
 * @param below lists inside each group
 */
record Level(List<String> path, String name, List<Slot> slots, List<Level> below) {
    Level {
        path = List.copyOf(path);
        slots = List.copyOf(slots);
        below = List.copyOf(below);
    }

    /** The list inside that a row goes on to; empty at the innermost, or where the row does not say. */
    Optional<Level> next(String which, Map<String, String> row) {
        if (below.size() == 1 && below.get(0).name().isEmpty()) {
            boolean any = below.get(0).within(row);
            return any ? Optional.of(below.get(0)) : Optional.empty();
        }
        return below.stream().filter(level -> level.names(which)).findFirst();
    }

    private boolean names(String which) {
        return name.equals(which) || name.isEmpty() && below.stream().anyMatch(level -> level.names(which));
    }

    private boolean within(Map<String, String> row) {
        return slots.stream().anyMatch(slot -> row.containsKey(slot.wanted().key()))
                || below.stream().anyMatch(level -> level.within(row));
    }
}
