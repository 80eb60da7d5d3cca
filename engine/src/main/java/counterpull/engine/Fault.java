package counterpull.engine;

/**
 * Why a computation refuses its input: one stable code for each kind of refusal. The codes are the same on the command
 * line, in files and in results, and are never reused for another meaning.
 */
public enum Fault {
    NOT_FINITE("not-finite"),
    MUST_BE_POSITIVE("must-be-positive"),
    OUTSIDE_LIMITS("outside-limits"),
    OUT_OF_REACH("out-of-reach"),
    PAST_STRAIGHT("past-straight"),
    PAST_JOINT_RANGE("past-joint-range"),
    PAST_TESTED_LENGTH("past-tested-length"),
    CONTACT_LOST("contact-lost"),
    SLACK_STACK("slack-stack"),
    COINCIDENT_POINTS("coincident-points"),
    UNBALANCED_SIDE_PULL("unbalanced-side-pull"),
    OUTSIDE_PUBLISHED_RANGE("outside-published-range"),
    NO_STOP("no-stop"),
    EMPTY_RANGE("empty-range");

    private final String code;

    Fault(String code) {
        this.code = code;
    }

    /** The stable code, in lower case with hyphens. */
    public String code() {
        return code;
    }
}
