package counterpull.engine.body;

/** Side of the body, the person's own left and right. LEFT comes first where a tie has to be broken. */
public enum Side {
    LEFT,
    RIGHT
}
