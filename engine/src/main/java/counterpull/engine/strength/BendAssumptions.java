package counterpull.engine.strength;

import counterpull.engine.Require;

/**
 * How far one person may lie from the curve that their tests bend, before any test: log ratio = a constant + a smooth
 * function of angle. With d the difference of two angles, their covariance is scaleSd² + shapeSd² exp(−d²/2 reach²).
 *
 * @param scaleSd standard deviation of the constant: the whole curve higher or lower
 * @param shapeSd standard deviation of the smooth function: stronger here, weaker there
 * @param reach over how many radians the smooth function stays alike
 */
public record BendAssumptions(double scaleSd, double shapeSd, double reach) {
    private static final Require.Limits SPREAD = new Require.Limits(0, 2);

    public BendAssumptions {
        Require.within(scaleSd, SPREAD, "spread of scale", "");
        Require.within(shapeSd, SPREAD, "spread of shape", "");
        Require.positive(reach, "reach of a test", "rad");
    }

    /** Covariance of the log ratio at two angles (rad). */
    public double covariance(double angle, double other) {
        double apart = (angle - other) / reach;
        return scaleSd * scaleSd + shapeSd * shapeSd * Math.exp(-apart * apart / 2);
    }
}
