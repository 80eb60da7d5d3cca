package counterpull.engine.strength;

/**
 * One curve out of those that a person may have: a given curve times a factor that changes smoothly with angle. {@link CurveDraws}
 * makes them.
 *
 * <p>Factors stand at equal steps over the given curve's angles; between them straight lines, beyond them the last one. What counts
 * as known stays as the given curve has it: drawing another strength teaches nothing about where the source measured. One drawn
 * curve is certain, so its own spread is 0.
 */
public final class VariedCurve implements StrengthCurve {
    private final StrengthCurve given;
    private final double[] factor;
    private final double low;
    private final double perStep;

    /**
     * @param given the curve that is varied
     * @param factor at equal steps from the lowest to the highest of its angles, two or more, each above 0
     */
    VariedCurve(StrengthCurve given, double[] factor) {
        this.given = given;
        this.factor = factor;
        low = given.angles().low();
        perStep = (factor.length - 1) / (given.angles().high() - low);
    }

    /** What the given curve is multiplied by at an angle (rad). */
    public double factor(double angle) {
        double at = (angle - low) * perStep;
        int last = factor.length - 1;
        if (!(at > 0)) {
            return factor[0];
        }
        int before = Math.min((int) at, last - 1);
        double share = Math.min(1, at - before);
        return factor[before] + share * (factor[before + 1] - factor[before]);
    }

    @Override
    public double held(double angle) {
        return given.held(angle) * factor(angle);
    }

    @Override
    public double atSpeed(double angle, double shorteningSpeed) {
        return given.atSpeed(angle, shorteningSpeed) * factor(angle);
    }

    @Override
    public boolean known(double angle, double shorteningSpeed) {
        return given.known(angle, shorteningSpeed);
    }

    @Override
    public void fill(double[] angles, double[] shorteningSpeeds, double[] out) {
        given.fill(angles, shorteningSpeeds, out);
        for (int i = 0; i < out.length; i++) {
            out[i] *= factor(angles[i]);
        }
    }

    @Override
    public void fill(double[] angles, double[][] shorteningSpeeds, double[][] out) {
        given.fill(angles, shorteningSpeeds, out);
        for (int i = 0; i < angles.length; i++) {
            double here = factor(angles[i]);
            for (double[] row : out) {
                row[i] *= here;
            }
        }
    }

    @Override
    public AngleRange angles() {
        return given.angles();
    }

    /** The given curve's peak, by which what is known is judged. */
    @Override
    public double peak() {
        return given.peak();
    }

    @Override
    public SpeedLaw speedLaw() {
        return given.speedLaw();
    }

    @Override
    public double logCovariance(double angle, double other) {
        return 0;
    }

    @Override
    public String source() {
        return "one of the curves that this person may have: " + given.source();
    }
}
