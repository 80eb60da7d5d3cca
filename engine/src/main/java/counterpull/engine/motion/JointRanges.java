package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.planar.Angles;

/**
 * A limb's own joint ranges: the lowest and highest anatomical angle of each joint that this person may use, rad (hip
 * flexion at which the pelvis rolls off the pad, dorsiflexion at which the heel lifts). Infinite where not stated.
 */
public final class JointRanges {
    private static final double TOUCH = 1e-9;
    private final double[] low = new double[Joint.values().length];
    private final double[] high = new double[Joint.values().length];

    private JointRanges() {
        java.util.Arrays.fill(low, Double.NEGATIVE_INFINITY);
        java.util.Arrays.fill(high, Double.POSITIVE_INFINITY);
    }

    /** No range stated for any joint. */
    public static JointRanges open() {
        return new JointRanges();
    }

    /** The same ranges with one joint's stated; either end may be infinite, low must lie below high. */
    public JointRanges with(Joint joint, Require.Limits range) {
        if (!(range.low() < range.high())) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    joint.words() + " range",
                    range.low(),
                    range.high(),
                    "rad",
                    "a joint range must have its low end below its high end");
        }
        JointRanges changed = new JointRanges();
        System.arraycopy(low, 0, changed.low, 0, low.length);
        System.arraycopy(high, 0, changed.high, 0, high.length);
        changed.low[joint.ordinal()] = range.low();
        changed.high[joint.ordinal()] = range.high();
        return changed;
    }

    /** Range of a joint, rad. */
    public Require.Limits of(Joint joint) {
        return new Require.Limits(low[joint.ordinal()], high[joint.ordinal()]);
    }

    /** Refuses an angle outside the joint's range, naming both in degrees. */
    public void check(Joint joint, double angle, String where) {
        Require.Limits range = of(joint);
        if (angle < range.low() - TOUCH || angle > range.high() + TOUCH) {
            double limit = angle < range.low() ? range.low() : range.high();
            throw new Refusal(
                    Fault.PAST_JOINT_RANGE,
                    joint.words() + " angle " + where,
                    angle,
                    limit,
                    "rad",
                    "the " + joint.words() + " would be at " + tenths(angle) + "° " + where
                            + ", past this person's own limit of " + tenths(limit) + "°");
        }
    }

    private static double tenths(double radians) {
        return Math.round(Angles.degrees(radians) * 10) / 10.0;
    }
}
