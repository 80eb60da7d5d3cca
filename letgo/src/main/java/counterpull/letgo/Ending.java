package counterpull.letgo;

/** How it ends when a machine is let go. */
public enum Ending {
    /** It lies on its bottom stop, or arrives there. */
    ON_THE_STOP("on-the-stop"),
    /** It passes the lowest place that anybody has asked about, and no stop is there. */
    NOTHING_CATCHES_IT("nothing-catches-it"),
    /** It gets to the upper end: something pulls it up by itself. */
    AT_THE_TOP("at-the-top"),
    /** It comes to rest between its ends, or has never moved. */
    AT_REST("at-rest"),
    /** A piece of rubber gets to its tested length: nothing is known beyond. */
    RUBBER_AT_TESTED_LENGTH("rubber-at-tested-length"),
    /** It is still swinging when the time that it is followed for is over. */
    STILL_SWINGING("still-swinging");

    private final String code;

    Ending(String code) {
        this.code = code;
    }

    /** The stable code, in lower case with hyphens; the same in every result, never reused for another meaning. */
    public String code() {
        return code;
    }
}
