package counterpull.engine.strength;

import counterpull.engine.Require;

/**
 * One strength test held still: the net torque of the joint, already corrected for the limb's own weight and for
 * where the pad was.
 *
 * @param angle anatomical angle, rad
 * @param torque N·m, above 0
 * @param relativeSd standard deviation of the torque over the torque, above 0 and at most 1; {@link Tester} seeds it
 * @param meaning whether the torque is the person's greatest there or only a floor under it
 */
public record IsometricTest(double angle, double torque, double relativeSd, Meaning meaning) {
    /** What a tested torque says of the greatest torque that the person has at that angle. */
    public enum Meaning {
        /** It is the greatest, but for the error of the reading. */
        REACHED,
        /**
         * The greatest is this or more: something else than strength ended the effort, such as pain, a strap that
         * slipped, or a tester who gave way.
         */
        AT_LEAST
    }

    public IsometricTest {
        Require.finite(angle, "angle of the test", "rad");
        Require.positive(torque, "tested torque", "N·m");
        Require.positive(relativeSd, "relative standard deviation of the test", "");
        Require.within(relativeSd, new Require.Limits(0, 1), "relative standard deviation of the test", "");
    }

    /** A test in which the person gave all they had there. */
    public IsometricTest(double angle, double torque, double relativeSd) {
        this(angle, torque, relativeSd, Meaning.REACHED);
    }

    /** A test that ended before the person gave all they had: a floor under their strength there. */
    public static IsometricTest atLeast(double angle, double torque, double relativeSd) {
        return new IsometricTest(angle, torque, relativeSd, Meaning.AT_LEAST);
    }

    /** Variance of the logarithm of the tested torque. */
    double logVariance() {
        return Math.log(1 + relativeSd * relativeSd);
    }
}
