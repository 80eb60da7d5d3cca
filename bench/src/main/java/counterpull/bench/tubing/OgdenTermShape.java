package counterpull.bench.tubing;

/**
 * One of Ogden's terms with its stiffness at rest kept apart: φ = (λ^(α−1) − λ^(−α/2−1))/α, so that force = μα · φ. It has a finite value
 * at α = 0, where a fit may pass.
 */
final class OgdenTermShape {
    /** Below this α ln λ the series is nearer than the difference of two powers. */
    private static final double SMALL = 1e-3;

    private OgdenTermShape() {}

    static double force(double alpha, double stretch) {
        double log = Math.log(stretch);
        double x = alpha * log;
        if (Math.abs(x) < SMALL) {
            return log / stretch * (1.5 + x * (0.375 + x * 0.1875));
        }
        return (Math.expm1(x) - Math.expm1(-x / 2)) / (alpha * stretch);
    }

    /** dφ/dλ. */
    static double rise(double alpha, double stretch) {
        double x = alpha * Math.log(stretch);
        return (Math.exp(x) + Math.exp(-x / 2) / 2) / (stretch * stretch) - force(alpha, stretch) / stretch;
    }

    /** dφ/dα. */
    static double byAlpha(double alpha, double stretch) {
        double log = Math.log(stretch);
        double x = alpha * log;
        if (Math.abs(x) < SMALL) {
            return log * log / stretch * (0.375 + x * (0.375 + x * 0.1171875));
        }
        double slope = log * (Math.exp(x) + Math.exp(-x / 2) / 2) / stretch;
        return (slope - force(alpha, stretch)) / alpha;
    }
}
