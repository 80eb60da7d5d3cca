package counterpull.engine.body;

import counterpull.engine.Require;
import counterpull.engine.planar.Angles;

/**
 * Anatomical angles beyond which no joint gets, rad: wide on purpose, against a slip of sign or unit, and no leave to go there.
 * A person's own ranges are narrower and come from a measurement. Source: from memory, the widest of flexible people with
 * 10° or more to spare.
 *
 * <p>Their middle also says how an angle is counted: a direction and the same after a whole turn are one posture, and an arm a little
 * past overhead is at 185°, not at −175°.
 */
public final class PossibleAngles {
    private PossibleAngles() {}

    /** Lowest and highest anatomical angle of a joint, rad. */
    public static Require.Limits of(Joint joint) {
        return switch (joint) {
            case HIP -> degrees(-60, 170);
            case KNEE -> degrees(-25, 171);
            case ANKLE -> degrees(-90, 60);
            case HIP_SIDEWAYS -> degrees(-60, 100);
            case SHOULDER -> degrees(-90, 210);
            case SHOULDER_SIDEWAYS -> degrees(-75, 210);
            case SHOULDER_TURNING -> degrees(-130, 140);
            case ELBOW -> degrees(-30, 171);
        };
    }

    /** Middle of what is possible, rad: a joint's angle is counted within half a turn of it. */
    public static double middle(Joint joint) {
        Require.Limits possible = of(joint);
        return (possible.low() + possible.high()) / 2;
    }

    private static Require.Limits degrees(double low, double high) {
        return new Require.Limits(Angles.radians(low), Angles.radians(high));
    }
}
