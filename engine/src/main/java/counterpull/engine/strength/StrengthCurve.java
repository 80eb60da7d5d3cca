package counterpull.engine.strength;

/**
 * What a person has in one action of one limb: the greatest net torque against joint angle, and how sure that is.
 *
 * <p>Angles are anatomical, rad; torques N·m, positive in the sense of the action, never negative. Uncertainty is
 * that of the logarithm of torque: 0.1 is about 10 %. It is the same at every speed.
 *
 * <p>Two-joint muscles are neglected. Fatigue is not in it: it is the first repetition. Lowering counts as held: a
 * muscle that lengthens under load usually makes more, but the published fits do not show it.
 */
public sealed interface StrengthCurve permits Prior, BentCurve, DrawnCurve, VariedCurve {
    /** Below this share of the peak a curve is not to be trusted: it is the tail of a fitted formula. */
    double KNOWN_SHARE_OF_PEAK = 0.15;

    /** Standard deviations on each side of the middle that hold 90 % of a normal distribution. */
    double NINETY_PERCENT = 1.6448536269514722;

    /** Greatest torque held still at an angle (rad), N·m, ≥ 0; outside {@link #angles()} an extrapolation. */
    double held(double angle);

    /** The angles between which the source measured, or the person was tested. */
    AngleRange angles();

    /** The largest held torque inside {@link #angles()}, N·m. */
    double peak();

    /** What is left of the held torque while shortening. */
    SpeedLaw speedLaw();

    /** Covariance of log torque at two angles (rad): what drawing whole curves at random needs. */
    double logCovariance(double angle, double other);

    /** Where the curve comes from, in a sentence for a person, without a full stop. */
    String source();

    /**
     * Greatest torque at a speed, N·m, ≥ 0.
     *
     * @param angle anatomical angle, rad
     * @param shorteningSpeed rad/s, above 0 while the action shortens; at 0 and below, the held torque
     */
    default double atSpeed(double angle, double shorteningSpeed) {
        double still = held(angle);
        return shorteningSpeed > 0 ? still * speedLaw().factor(angle, shorteningSpeed) : still;
    }

    /** Whether the curve says anything there: inside its angles, and at least 15 % of its peak at that speed. */
    default boolean known(double angle, double shorteningSpeed) {
        return angles().contains(angle) && atSpeed(angle, shorteningSpeed) >= KNOWN_SHARE_OF_PEAK * peak();
    }

    /** Standard deviation of log torque at an angle (rad). */
    default double logSd(double angle) {
        return Math.sqrt(Math.max(0, logCovariance(angle, angle)));
    }

    /** Lower end of the 90 % band of the held torque, N·m. */
    default double lower90(double angle) {
        return held(angle) * Math.exp(-NINETY_PERCENT * logSd(angle));
    }

    /** Upper end of the 90 % band of the held torque, N·m. */
    default double upper90(double angle) {
        return held(angle) * Math.exp(NINETY_PERCENT * logSd(angle));
    }

    /**
     * {@link #atSpeed} for a whole range at once; NaN where not {@link #known}. The three arrays have one length.
     *
     * @param angles rad
     * @param shorteningSpeeds rad/s
     * @param out receives torque, N·m
     */
    default void fill(double[] angles, double[] shorteningSpeeds, double[] out) {
        AngleRange range = angles();
        double least = KNOWN_SHARE_OF_PEAK * peak();
        for (int i = 0; i < out.length; i++) {
            double torque = range.contains(angles[i]) ? atSpeed(angles[i], shorteningSpeeds[i]) : Double.NaN;
            out[i] = torque >= least ? torque : Double.NaN;
        }
    }

    /**
     * The same for several rows of speeds at the same angles: what does not depend on speed is taken once.
     *
     * @param angles rad
     * @param shorteningSpeeds rad/s, rows as long as angles
     * @param out receives torque, N·m, as many rows
     */
    default void fill(double[] angles, double[][] shorteningSpeeds, double[][] out) {
        AngleRange range = angles();
        double least = KNOWN_SHARE_OF_PEAK * peak();
        for (int i = 0; i < angles.length; i++) {
            double still = range.contains(angles[i]) ? held(angles[i]) : Double.NaN;
            for (int row = 0; row < out.length; row++) {
                double speed = shorteningSpeeds[row][i];
                double torque = speed > 0 ? still * speedLaw().factor(angles[i], speed) : still;
                out[row][i] = torque >= least ? torque : Double.NaN;
            }
        }
    }
}
