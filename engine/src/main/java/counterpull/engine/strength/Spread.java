package counterpull.engine.strength;

/** {@link BendAssumptions} about one given curve: the covariance of a person's log ratio to it. */
final class Spread {
    private final StrengthCurve given;
    private final BendAssumptions assumptions;

    Spread(StrengthCurve given, BendAssumptions assumptions) {
        this.given = given;
        this.assumptions = assumptions;
    }

    /**
     * The given curve's torque (N·m), carried on level beyond its angles: the tail of its formula would call a person
     * weak where nobody was measured.
     */
    double level(double angle) {
        AngleRange range = given.angles();
        return given.held(Math.max(range.low(), Math.min(range.high(), angle)));
    }

    /** Standard deviation of the smooth part at an angle; it stops growing where the curve counts as not known. */
    double shapeSd(double angle) {
        return shapeSdWhere(level(angle));
    }

    /** The same where the given curve's torque (N·m) is already at hand. */
    double shapeSdWhere(double level) {
        double share = Math.max(StrengthCurve.KNOWN_SHARE_OF_PEAK, level / given.peak());
        return assumptions.shapeSd() / share;
    }

    double covariance(double angle, double other) {
        return covariance(angle - other, shapeSd(angle), shapeSd(other));
    }

    /** With the two standard deviations of the smooth part already at hand. */
    double covariance(double apart, double shapeSd, double otherShapeSd) {
        double reaches = apart / assumptions.reach();
        double scale = assumptions.scaleSd();
        return scale * scale + shapeSd * otherShapeSd * Math.exp(-reaches * reaches / 2);
    }
}
