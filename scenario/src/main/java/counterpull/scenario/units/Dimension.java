package counterpull.scenario.units;

/** What kind of quantity a number is. Two quantities can be compared only inside one dimension. */
public enum Dimension {
    LENGTH("length"),
    AREA("area"),
    ANGLE("angle"),
    MASS("mass"),
    FORCE("force"),
    TORQUE("torque"),
    STIFFNESS("stiffness"),
    STRESS("stress"),
    TIME("time"),
    AGE("age"),
    SPEED("speed"),
    ANGULAR_SPEED("angular speed"),
    INERTIA("moment of inertia"),
    RATIO("fraction");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** The dimension's name as a person says it. */
    public String words() {
        return words;
    }
}
