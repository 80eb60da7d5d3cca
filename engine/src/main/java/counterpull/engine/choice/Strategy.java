package counterpull.engine.choice;

/** A way to shape the challenge; kept apart so that a person can choose between them. */
public enum Strategy {
    LOAD_ALONE("load alone"),
    RELIEVE_LOW("relieve low"),
    ADD_HIGH("add high"),
    BOTH("relieve low and add high"),
    SPLIT_RANGE("split range");

    private final String words;

    Strategy(String words) {
        this.words = words;
    }

    /** The strategy as a person says it. */
    public String words() {
        return words;
    }
}
