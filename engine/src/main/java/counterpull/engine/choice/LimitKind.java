package counterpull.engine.choice;

/** A hard limit that a setup can pass. */
public enum LimitKind {
    CEILING("effort ceiling", ""),
    FLOOR("floor on the contact force", "N"),
    JOINT_TORQUE("joint torque limit", "N·m"),
    KNEECAP_STRESS("kneecap joint stress limit", "Pa"),
    TURN_FORCE("limit on the force at the turn", "N"),
    ANCHOR_LOAD("anchor rating", "N");

    private final String words;
    private final String unit;

    LimitKind(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** The limit as a person says it. */
    public String words() {
        return words;
    }

    /** SI unit of its values; empty for a pure number. */
    public String unit() {
        return unit;
    }
}
