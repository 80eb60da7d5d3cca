package counterpull.readings.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A kind of table that can be read: what its rows hold. */
public interface TableKind {
    /** Its name on the command line and in a mapping. */
    String word();

    /** What a row may hold. */
    List<Wanted> columns();

    /** Things of which one at least must be said. */
    default List<Asked> asked() {
        return List.of();
    }

    /** What is wrong with a row as a whole, whose cells are each good; each without a full stop. */
    default List<String> lacking(Map<String, String> row) {
        return List.of();
    }

    /** The wanted thing of that name. */
    default Optional<Wanted> column(String key) {
        return columns().stream().filter(wanted -> wanted.key().equals(key)).findFirst();
    }
}
