package counterpull.engine.load;

/** How a piece of rubber hangs between its two ends. */
public enum Hang {
    /** End to end: one strand. */
    SINGLE(1, "single"),
    /** Folded over a hook: two strands of half the length. */
    DOUBLED(2, "doubled");

    private final int strands;
    private final String words;

    Hang(int strands, String words) {
        this.strands = strands;
        this.words = words;
    }

    /** Strands of one piece. */
    public int strands() {
        return strands;
    }

    /** The way in words. */
    public String words() {
        return words;
    }
}
