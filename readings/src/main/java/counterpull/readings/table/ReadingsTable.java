package counterpull.readings.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Readings of one kind of subject as a table: a row a reading, what belongs to the subject repeated in each.
 *
 * @param word its name on the command line and in a mapping
 * @param top the list of subjects; its path is the key in a file of readings
 * @param which says to which list of readings a row belongs, where a subject has several
 * @param asked of which one at least must be there
 */
public record ReadingsTable(String word, Level top, Which which, List<Asked> asked) implements TableKind {
    public ReadingsTable {
        asked = List.copyOf(asked);
    }

    /** Where the list of subjects stands in a file of readings. */
    public List<String> key() {
        return top.path();
    }

    @Override
    public List<Wanted> columns() {
        Map<String, Wanted> columns = new LinkedHashMap<>();
        List<String> lists = new ArrayList<>();
        names(top, lists);
        collect(top, everywhere(top), columns);
        if (!lists.isEmpty()) {
            columns.put(which.key(), which.wanted(lists));
        }
        return List.copyOf(columns.values());
    }

    private static void names(Level level, List<String> names) {
        if (!level.name().isEmpty()) {
            names.add(level.name());
        }
        level.below().forEach(inner -> names(inner, names));
    }

    /** Every thing that some row may hold; what only some rows need cannot be asked of the whole file. */
    private static void collect(Level level, Set<String> everywhere, Map<String, Wanted> columns) {
        for (Slot slot : level.slots()) {
            Wanted wanted = slot.wanted();
            columns.putIfAbsent(wanted.key(), everywhere.contains(wanted.key()) ? wanted : wanted.optional());
        }
        level.below().forEach(inner -> collect(inner, everywhere, columns));
    }

    /** Keys without which no row is of use, whichever list it goes to. */
    private static Set<String> everywhere(Level level) {
        Set<String> needed = new LinkedHashSet<>();
        for (int i = 0; i < level.below().size(); i++) {
            Set<String> below = everywhere(level.below().get(i));
            if (i == 0) {
                needed.addAll(below);
            } else {
                needed.retainAll(below);
            }
        }
        level.slots().stream()
                .map(Slot::wanted)
                .filter(wanted -> wanted.need() == Wanted.Need.MUST)
                .forEach(wanted -> needed.add(wanted.key()));
        return needed;
    }

    @Override
    public List<String> lacking(Map<String, String> row) {
        List<String> faults = new ArrayList<>();
        List<String> belongs = new ArrayList<>(List.of(which.key()));
        Optional<Level> level = Optional.of(top);
        while (level.isPresent()) {
            for (Slot slot : level.get().slots()) {
                String key = slot.wanted().key();
                belongs.add(key);
                if (slot.wanted().need() == Wanted.Need.MUST && !row.containsKey(key)) {
                    faults.add("the " + key + " is missing");
                }
            }
            level = level.get().next(which.of(row), row);
        }
        row.keySet().stream()
                .filter(key -> !belongs.contains(key))
                .forEach(key -> faults.add("a row of " + row.getOrDefault(which.key(), word) + " has no " + key));
        return faults;
    }
}
