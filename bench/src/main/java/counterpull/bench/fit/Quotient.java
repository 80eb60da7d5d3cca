package counterpull.bench.fit;

import counterpull.bench.Estimate;
import counterpull.bench.Student;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;

/**
 * A ratio of two measured numbers with Fieller's interval, which holds its 95 % also where the lower number is not sharp and the
 * delta method would not.
 *
 * <p>Formula: all R with (a − R b)² ≤ t² (var a − 2 R cov + R² var b). Refused where b itself may be 0. Source: Fieller EC 1954, J R Stat
 * Soc B 16:175–185 (from memory).
 *
 * @param above a
 * @param below b, not 0
 * @param varianceAbove of a
 * @param varianceBelow of b
 * @param covariance of both
 */
public record Quotient(double above, double below, double varianceAbove, double varianceBelow, double covariance) {

    /** The ratio; variances with so many degrees of freedom, infinite where they are known. */
    public Estimate estimate(double degreesOfFreedom) {
        double t = Student.twoSided95(degreesOfFreedom);
        double a = below * below - t * t * varianceBelow;
        double b = above * below - t * t * covariance;
        double c = above * above - t * t * varianceAbove;
        if (!(a > 0)) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "lower number of a ratio",
                    Math.abs(below),
                    t * Math.sqrt(varianceBelow),
                    "",
                    "the lower number of the ratio cannot be told from nothing: take it larger, or more often");
        }
        double root = Math.sqrt(Math.max(0, b * b - a * c));
        return new Estimate(ratio(), standardError(), (b - root) / a, (b + root) / a, Estimate.Standing.FREE);
    }

    private double ratio() {
        return above / below;
    }

    private double standardError() {
        double variance = varianceAbove - 2 * ratio() * covariance + ratio() * ratio() * varianceBelow;
        return Math.sqrt(Math.max(0, variance)) / Math.abs(below);
    }
}
