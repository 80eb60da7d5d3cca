package counterpull.readings.table;

import java.util.List;
import java.util.Optional;

/** Every kind of table that can be read: a new one is a class and a line here. */
public final class TableKinds {
    /** All of them, in the order in which they are told. */
    public static final List<TableKind> ALL = List.of(
            RubberTable.rubber(),
            MachineTables.sled(),
            MachineTables.machine(),
            MachineTables.machineByAngle(),
            MachineTables.machineTorque(),
            MachineTables.stack(),
            MachineTables.lever(),
            MachineTables.cam(),
            MachineTables.camByTorque(),
            PeopleTables.tests(),
            PeopleTables.ranges(),
            PeopleTables.lengths(),
            PeopleTables.girths(),
            new TraceTable());

    private TableKinds() {}

    /** Those whose rows make files of readings. */
    public static List<ReadingsTable> ofReadings() {
        return ALL.stream()
                .filter(ReadingsTable.class::isInstance)
                .map(ReadingsTable.class::cast)
                .toList();
    }

    /** The kind of that name. */
    public static Optional<TableKind> named(String word) {
        return ALL.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** All names. */
    public static List<String> words() {
        return ALL.stream().map(TableKind::word).toList();
    }
}
