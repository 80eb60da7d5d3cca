package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.PossibleAngles;
import counterpull.engine.planar.Angles;

/**
 * A limb's own joint ranges: the lowest and highest anatomical angle of each joint that this person may use, rad (hip
 * flexion at which the pelvis rolls off the pad, dorsiflexion at which the heel lifts). Infinite where not stated: then only
 * what no body does is refused ({@link PossibleAngles}).
 */
public final class JointRanges {
    private static final double TOUCH = 1e-9;
    private static final Require.Limits ANY = new Require.Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    private final Require.Limits[] own = new Require.Limits[Joint.values().length];
    private final Require.Limits[] possible = new Require.Limits[own.length];

    private JointRanges() {
        java.util.Arrays.fill(own, ANY);
        java.util.Arrays.fill(possible, ANY);
    }

    /** No range of the person's own stated for any joint. */
    public static JointRanges open() {
        JointRanges ranges = new JointRanges();
        for (Joint joint : Joint.values()) {
            ranges.possible[joint.ordinal()] = PossibleAngles.of(joint);
        }
        return ranges;
    }

    /** No range at all, not even a body's: for checks of the mechanics against postures drawn at random. */
    public static JointRanges anyPosture() {
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
        System.arraycopy(own, 0, changed.own, 0, own.length);
        System.arraycopy(possible, 0, changed.possible, 0, own.length);
        changed.own[joint.ordinal()] = range;
        return changed;
    }

    /** The person's own range of a joint, rad; infinite where not stated. */
    public Require.Limits of(Joint joint) {
        return own[joint.ordinal()];
    }

    /** Refuses an angle outside the person's own range of the joint, naming both in degrees. */
    public void check(Joint joint, double angle, String where) {
        Require.Limits range = of(joint);
        if (passes(range, angle)) {
            double limit = passed(range, angle);
            String sentence = "the " + joint.words() + " would be at " + tenths(angle) + "° " + where
                    + ", past this person's own limit of " + tenths(limit) + "°";
            throw refusal(joint, angle, limit, where, sentence);
        }
    }

    /** Refuses an angle that no body has, then one outside the person's own range, naming both in degrees. */
    public void checkPosture(Joint joint, double angle, String where) {
        Require.Limits range = possible[joint.ordinal()];
        if (passes(range, angle)) {
            double limit = passed(range, angle);
            String sentence = joint.angleWords() + " would be " + tenths(angle) + "° " + where
                    + ", which no body does (past " + tenths(limit)
                    + "°): check the angle's sign and which way the part before it points";
            throw refusal(joint, angle, limit, where, sentence);
        }
        check(joint, angle, where);
    }

    // an angle that is not a number is inside nothing
    private static boolean passes(Require.Limits range, double angle) {
        return !(angle >= range.low() - TOUCH && angle <= range.high() + TOUCH);
    }

    private static double passed(Require.Limits range, double angle) {
        return angle < range.low() ? range.low() : range.high();
    }

    private static Refusal refusal(Joint joint, double angle, double limit, String where, String sentence) {
        return new Refusal(Fault.PAST_JOINT_RANGE, joint.words() + " angle " + where, angle, limit, "rad", sentence);
    }

    private static double tenths(double radians) {
        return Math.round(Angles.degrees(radians) * 10) / 10.0;
    }
}
