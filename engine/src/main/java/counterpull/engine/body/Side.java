package counterpull.engine.body;

/** Side of the body, the person's own left and right. LEFT comes first where a tie has to be broken. */
public enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String words;

    Side(String words) {
        this.words = words;
    }

    /** The side as a person says it. */
    public String words() {
        return words;
    }
}
