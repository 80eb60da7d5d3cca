package counterpull.bench.tubing;

/** What the piece went through before its readings. */
public enum Preparation {
    /** Nothing: a fresh or long rested piece, pulled for the first time. */
    FIRST_STRETCH("first stretch"),
    /** Stretched and let go three times or more, as far as it is used. */
    CYCLED("cycled before"),
    /** Nobody noted it. */
    NOT_NOTED("not noted");

    private final String words;

    Preparation(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
