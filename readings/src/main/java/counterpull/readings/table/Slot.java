package counterpull.readings.table;

import java.util.List;
import java.util.Map;

/**
 * Where a wanted thing stands inside a group of a file of readings.
 *
 * @param wanted what it is
 * @param path keys from the group inward; empty where the item of the list is the value itself
 * @param form how the value is written there
 */
record Slot(Wanted wanted, List<String> path, Form form) {
    private static final Form SINGLE = value -> value;
    private static final Form LIST_OF_ONE = value -> List.of(value);

    Slot {
        path = List.copyOf(path);
    }

    /** How a value is written: by itself, or where a list is due and one value is given. */
    interface Form {
        Object of(String value);
    }

    /** Under its own name. */
    static Slot of(Wanted wanted) {
        return in(wanted, wanted.key());
    }

    /** Inside groups of the group. */
    static Slot in(Wanted wanted, String... path) {
        return new Slot(wanted, List.of(path), SINGLE);
    }

    /** The item of the list itself. */
    static Slot itself(Wanted wanted) {
        return new Slot(wanted, List.of(), SINGLE);
    }

    /** Under its own name, where a list of values is due. */
    static Slot listed(Wanted wanted) {
        return new Slot(wanted, List.of(wanted.key()), LIST_OF_ONE);
    }

    /** Under its own name, where a list of groups is due, each with the value under a key. */
    static Slot listed(Wanted wanted, String key) {
        return new Slot(wanted, List.of(wanted.key()), value -> List.of(Map.of(key, value)));
    }
}
