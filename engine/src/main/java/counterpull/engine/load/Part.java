package counterpull.engine.load;

/** What a share of a force or torque comes from. */
public enum Part {
    GRAVITY("weight"),
    ELASTIC("rubber"),
    FRICTION("friction"),
    INERTIA("starting and stopping the mass"),
    LIMB_WEIGHT("the limb's own weight"),
    LIMB_INERTIA("starting and stopping the limb");

    private final String words;

    Part(String words) {
        this.words = words;
    }

    /** The part as a person reads it. */
    public String words() {
        return words;
    }
}
