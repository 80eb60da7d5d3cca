package counterpull.engine.motion;

/**
 * To which side of the upper arm the forearm folds in a frontal plane, where the posture alone does not say it. The plane is seen so
 * that the arm is raised sideways counter-clockwise.
 */
public enum ElbowSide {
    /** The forearm turns counter-clockwise from the upper arm: hand toward the head of an arm held out (a press overhead). */
    TOWARD_HEAD(1),
    /** The forearm turns clockwise from the upper arm: hand toward the feet of an arm held out. */
    TOWARD_FEET(-1);

    private final int turn;

    ElbowSide(int turn) {
        this.turn = turn;
    }

    /** +1 where elbow flexion turns the forearm counter-clockwise, −1 where clockwise. */
    int turn() {
        return turn;
    }
}
