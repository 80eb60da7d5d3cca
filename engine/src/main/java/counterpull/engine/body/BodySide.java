package counterpull.engine.body;

import java.util.Optional;

/**
 * One side of a person: its leg and arm, and the trunk that both sides share.
 *
 * @param leg thigh, shank, foot
 * @param arm upper arm, forearm and hand; empty where only the leg is known, which is enough for a press
 * @param trunk head, arms and trunk of the whole person as one segment from hip to shoulder; empty where the named table has no
 *     such row, and then nothing that stands can be computed
 */
public record BodySide(Leg leg, Optional<Arm> arm, Optional<Segment> trunk) {
    /** A side of which only the leg is known. */
    public static BodySide of(Leg leg) {
        return new BodySide(leg, Optional.empty(), Optional.empty());
    }
}
