package counterpull.engine.strength;

import counterpull.engine.Require;

/**
 * How far one person may lie from a curve before any test: log ratio = a constant + a smooth function of angle. With
 * d the difference of two angles and p the curve's peak over its torque there, the covariance is scaleSd² + shapeSd²
 * p p′ exp(−d²/2 reach²): an error of shape is a share of the peak, so it is a larger share of a small torque.
 *
 * @param scaleSd standard deviation of the constant: the whole curve higher or lower
 * @param shapeSd standard deviation of the smooth function at the peak: stronger here, weaker there
 * @param reach over how many radians the smooth function stays alike
 */
public record BendAssumptions(double scaleSd, double shapeSd, double reach) {
    private static final Require.Limits SPREAD = new Require.Limits(0, 2);

    public BendAssumptions {
        Require.within(scaleSd, SPREAD, "spread of scale", "");
        Require.within(shapeSd, SPREAD, "spread of shape", "");
        Require.positive(reach, "reach of a test", "rad");
    }
}
