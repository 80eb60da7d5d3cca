package counterpull.engine.load;

/** Where across the sled a line runs, so that its sideways pulls cancel. */
public enum Placement {
    /** In the middle plane. */
    CENTRED("centred"),
    /** One half of the pieces on each side, mirror images. */
    MATCHED_PAIR("matched pair");

    private final String words;

    Placement(String words) {
        this.words = words;
    }

    /** The placement in words. */
    public String words() {
        return words;
    }
}
