package counterpull.scenario.units;

/** What came of reading a text as a quantity: the quantity, or the reason why not. */
public sealed interface Reading {

    /** The text is a quantity. */
    record Read(Quantity quantity) implements Reading {}

    /**
     * The text is no quantity that can be used.
     *
     * @param reason what kind of fault
     * @param detail the offending piece of the text: the unknown unit, the comma's number
     */
    record Refused(Reason reason, String detail) implements Reading {}

    /** Why a text is refused. */
    enum Reason {
        NOT_A_NUMBER,
        NOT_FINITE,
        DECIMAL_COMMA,
        UNIT_MISSING,
        UNKNOWN_UNIT,
        WRONG_UNIT
    }
}
