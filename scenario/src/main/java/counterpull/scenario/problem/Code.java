package counterpull.scenario.problem;

import counterpull.engine.Fault;
import java.util.Arrays;

/**
 * What kind of problem a scenario has: one stable code each, never reused for another meaning. Those of the engine's
 * {@link Fault} are among them under the same text.
 */
public enum Code {
    FILE_NOT_FOUND("file-not-found"),
    NOT_READABLE("not-readable"),
    TOO_LARGE("too-large"),
    NOT_TEXT("not-text"),
    TAB("tab"),
    TRUNCATED("truncated"),
    SYNTAX("syntax"),
    TOO_DEEP("too-deep"),
    TOO_MANY_PARTS("too-many-parts"),
    ALIAS("alias"),
    MERGE_KEY("merge-key"),
    TYPE_TAG("type-tag"),
    SEVERAL_DOCUMENTS("several-documents"),
    UNKNOWN_FORMAT("unknown-format"),

    DUPLICATE_KEY("duplicate-key"),
    UNKNOWN_KEY("unknown-key"),
    MISSING_KEY("missing-key"),
    WRONG_KIND("wrong-kind"),
    VALUE_MISSING("value-missing"),
    TOO_FEW("too-few"),
    TOO_MANY("too-many"),

    NOT_A_NUMBER("not-a-number"),
    DECIMAL_COMMA("decimal-comma"),
    UNIT_MISSING("unit-missing"),
    UNKNOWN_UNIT("unknown-unit"),
    WRONG_UNIT("wrong-unit"),
    NOT_A_CHOICE("not-a-choice"),
    NOT_A_TEXT("not-a-text"),
    UNKNOWN_NAME("unknown-name"),
    DUPLICATE_NAME("duplicate-name"),
    NOT_ON_HAND("not-on-hand"),
    CONTRADICTION("contradiction"),
    OUT_OF_ORDER("out-of-order"),
    RANGE_NOT_MEASURED("range-not-measured"),
    OPEN_QUOTE("open-quote"),
    NO_TABLE("no-table"),
    RAGGED_ROW("ragged-row"),
    OPEN_QUESTION("open-question"),

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

    private final String text;

    Code(String text) {
        this.text = text;
    }

    /** The stable code, in lower case with hyphens. */
    public String text() {
        return text;
    }

    /** The code under which a refusal of the engine is reported: the same text. */
    public static Code of(Fault fault) {
        return Arrays.stream(values())
                .filter(code -> code.text.equals(fault.code()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no code for " + fault));
    }
}
