package counterpull.engine.strength;

import counterpull.engine.Require;

/**
 * One strength test held still: the net torque of the joint, already corrected for the limb's own weight and for
 * where the pad was.
 *
 * @param angle anatomical angle, rad
 * @param torque N·m, above 0
 * @param relativeSd standard deviation of the torque over the torque, above 0 and at most 1; {@link Tester} seeds it
 */
public record IsometricTest(double angle, double torque, double relativeSd) {
    public IsometricTest {
        Require.finite(angle, "angle of the test", "rad");
        Require.positive(torque, "tested torque", "N·m");
        Require.positive(relativeSd, "relative standard deviation of the test", "");
        Require.within(relativeSd, new Require.Limits(0, 1), "relative standard deviation of the test", "");
    }

    /** Variance of the logarithm of the tested torque. */
    double logVariance() {
        return Math.log(1 + relativeSd * relativeSd);
    }
}
