package counterpull.bench;

/** Which way a machine moved while a scale was read. */
public enum Way {
    /** Slowly pulled toward the top. */
    UP("up", 1),
    /** Slowly let back. */
    DOWN("down", -1);

    private final String words;
    private final int sense;

    Way(String words, int sense) {
        this.words = words;
        this.sense = sense;
    }

    /** How a person says it. */
    public String words() {
        return words;
    }

    /** +1 up, −1 down: the sign of friction in the reading. */
    public int sense() {
        return sense;
    }
}
