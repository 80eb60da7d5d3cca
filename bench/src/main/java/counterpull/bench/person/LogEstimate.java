package counterpull.bench.person;

import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.Student;

/**
 * A positive number whose error is a factor: its interval is value ÷ and × the same factor, since doubling and halving are equally far
 * off, and since the engine's curves are uncertain so.
 *
 * @param value the number, above 0
 * @param budget of its logarithm
 */
public record LogEstimate(double value, Budget budget) {
    /** Natural logarithm of the factor that the 95 % interval reaches to each side. */
    public double half() {
        return Student.twoSided95(budget.degreesOfFreedom()) * budget.standardError();
    }

    /** The number with its standard error and interval. */
    public Estimate estimate() {
        double factor = Math.exp(half());
        return new Estimate(
                value, value * budget.standardError(), value / factor, value * factor, Estimate.Standing.FREE);
    }
}
