package counterpull.readings.table;

import java.util.List;

/**
 * Where a wanted thing stands inside a group of a file of readings.
 *
 * @param wanted what it is
 * @param path keys from the group inward; empty where the item of the list is the value itself
 */
record Slot(Wanted wanted, List<String> path) {
    Slot {
        path = List.copyOf(path);
    }

    /** Under its own name. */
    static Slot of(Wanted wanted) {
        return new Slot(wanted, List.of(wanted.key()));
    }

    /** Inside groups of the group. */
    static Slot in(Wanted wanted, String... path) {
        return new Slot(wanted, List.of(path));
    }
}
