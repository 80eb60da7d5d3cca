package counterpull.bench.person;

import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.Student;

/**
 * One torque over another: a side over the other, or now over before.
 *
 * @param ratio the one over the other
 * @param budget uncertainty of the ratio's logarithm
 * @param how whether both were tested at one angle
 */
public record Comparison(double ratio, Budget budget, How how) {
    /** What was laid beside what. */
    public enum How {
        /** Tested at one angle. */
        SAME_ANGLE,
        /** Tested at two angles: the second is carried to the first by the published curve's shape, which widens the interval. */
        BY_CURVE
    }

    /** Ratio less one: a share, with its interval. */
    public Estimate percent() {
        double factor = Math.exp(half());
        return new Estimate(
                ratio - 1,
                ratio * budget.standardError(),
                ratio / factor - 1,
                ratio * factor - 1,
                Estimate.Standing.FREE);
    }

    private double half() {
        return Student.twoSided95(budget.degreesOfFreedom()) * budget.standardError();
    }

    /** Whether it is beyond what measuring alone makes of no difference, 95 times in 100. */
    public boolean beyond() {
        return Math.abs(Math.log(ratio)) > half();
    }

    /** Smallest share, in the direction of this one, that would be beyond it. */
    public double detectable() {
        return ratio >= 1 ? Math.expm1(half()) : -Math.expm1(-half());
    }
}
