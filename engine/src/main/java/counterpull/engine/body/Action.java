package counterpull.engine.body;

/** What muscles do at a joint of the leg; each has its own strength curve. */
public enum Action {
    HIP_EXTENSION("hip extension"),
    HIP_FLEXION("hip flexion"),
    KNEE_EXTENSION("knee extension"),
    KNEE_FLEXION("knee flexion"),
    ANKLE_PLANTARFLEXION("ankle plantarflexion"),
    ANKLE_DORSIFLEXION("ankle dorsiflexion");

    private final String words;

    Action(String words) {
        this.words = words;
    }

    /** The action's name as a person says it. */
    public String words() {
        return words;
    }
}
