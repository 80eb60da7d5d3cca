package counterpull.bench.machine;

import counterpull.bench.Kind;

/** What an unknown machine was measured in. */
public enum Quantity {
    FORCE_BY_TRAVEL("force by travel", Kind.FORCE, Kind.LENGTH),
    FORCE_BY_ANGLE("force by angle", Kind.FORCE, Kind.ANGLE),
    TORQUE_BY_ANGLE("torque by angle", Kind.TORQUE, Kind.ANGLE);

    private final String words;
    private final Kind size;
    private final Kind position;

    Quantity(String words, Kind size, Kind position) {
        this.words = words;
        this.size = size;
        this.position = position;
    }

    /** As a scenario's file says it. */
    public String words() {
        return words;
    }

    /** Force or torque. */
    public Kind size() {
        return size;
    }

    /** Length or angle. */
    public Kind position() {
        return position;
    }
}
