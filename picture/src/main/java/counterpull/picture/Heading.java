package counterpull.picture;

import counterpull.engine.motion.Phase;

/** Which way along the range a curve is travelled; drawn as arrow heads. */
public enum Heading {
    NONE,
    TO_TOP,
    TO_BOTTOM;

    static Heading of(Phase phase) {
        return switch (phase) {
            case HELD -> NONE;
            case LIFTING -> TO_TOP;
            case LOWERING -> TO_BOTTOM;
        };
    }
}
