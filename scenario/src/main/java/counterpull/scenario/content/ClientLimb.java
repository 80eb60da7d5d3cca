package counterpull.scenario.content;

import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.motion.WorkingRange;

/**
 * One limb of the person.
 *
 * @param side left or right
 * @param measured lengths that were measured
 * @param ranges the ranges worked over
 * @param jointLimits the joints' own limits
 * @param strength tests and own curves
 */
public record ClientLimb(
        Side side, MeasuredLengths measured, Ranges ranges, JointLimits jointLimits, OwnStrength strength) {

    /** Knee flexion worked over on a sled, rad; a reader of presses has seen to it that there is one. */
    public WorkingRange pressRange() {
        return ranges.press()
                .orElseThrow(() -> new IllegalStateException("no range of the " + side.words() + " limb on a sled"));
    }
}
