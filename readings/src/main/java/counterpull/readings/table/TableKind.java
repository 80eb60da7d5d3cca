package counterpull.readings.table;

import java.util.List;
import java.util.Optional;

/** A kind of table that can be read: what its rows hold. */
public interface TableKind {
    /** Its name on the command line and in a mapping. */
    String word();

    /** What a row may hold. */
    List<Wanted> columns();

    /** The wanted thing of that name. */
    default Optional<Wanted> column(String key) {
        return columns().stream().filter(wanted -> wanted.key().equals(key)).findFirst();
    }
}
