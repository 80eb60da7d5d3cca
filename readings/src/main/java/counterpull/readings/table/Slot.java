package counterpull.readings.table;

import java.util.List;

/**
 * Where a wanted thing stands inside a group of a file of readings.
 *
 * @param wanted what it is
 * @param path keys from the group inward; empty where the item of the list is the value itself
 * @param form how the value is written there
 */
record Slot(Wanted wanted, List<String> path, Form form) {
    /** How a value is written. */
    enum Form {
        /** By itself. */
        SINGLE,
        /** As a list of one. */
        LIST_OF_ONE
    }

    Slot {
        path = List.copyOf(path);
    }

    /** Under its own name. */
    static Slot of(Wanted wanted) {
        return new Slot(wanted, List.of(wanted.key()), Form.SINGLE);
    }

    /** Under its own name, where a list is due and one value is given. */
    static Slot listed(Wanted wanted) {
        return new Slot(wanted, List.of(wanted.key()), Form.LIST_OF_ONE);
    }

    /** The item of the list itself. */
    static Slot itself(Wanted wanted) {
        return new Slot(wanted, List.of(), Form.SINGLE);
    }

    /** Inside groups of the group. */
    static Slot in(Wanted wanted, String... path) {
        return new Slot(wanted, List.of(path), Form.SINGLE);
    }
}
