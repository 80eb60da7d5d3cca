package counterpull.engine.load;

/** What a coefficient of a force is multiplied by. */
public enum Amount {
    /** 1: fixed for person, machine and tempo. */
    ONE,
    /** Kilograms of plates (or of a stack, or of whatever is chosen by its mass). */
    PLATES,
    /** Strands of one line. */
    STRANDS
}
