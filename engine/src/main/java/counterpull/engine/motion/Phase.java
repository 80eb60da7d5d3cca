package counterpull.engine.motion;

/** What the load is doing: held still, moving from bottom to top (lifting), or from top to bottom (lowering). */
public enum Phase {
    HELD("held", 0),
    LIFTING("lifting", 1),
    LOWERING("lowering", -1);

    private final String words;
    private final int sense;

    Phase(String words, int sense) {
        this.words = words;
        this.sense = sense;
    }

    /** The phase's name as a person says it. */
    public String words() {
        return words;
    }

    /** +1 toward the top, −1 toward the bottom, 0 held. */
    public int sense() {
        return sense;
    }
}
