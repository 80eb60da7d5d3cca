package counterpull.scenario.content;

import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.motion.WorkingRange;

/**
 * One limb of the person.
 *
 * @param side left or right
 * @param measured lengths that were measured
 * @param range the range worked over
 * @param jointLimits the joints' own limits
 * @param strength tests and own curves
 */
public record ClientLimb(
        Side side, MeasuredLengths measured, WorkingRange range, JointLimits jointLimits, OwnStrength strength) {}
