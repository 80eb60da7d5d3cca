package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.engine.Constants;
import java.util.function.ToDoubleFunction;

/**
 * A line's ratio and where it comes from.
 *
 * @param estimate R
 * @param scatter standard error of R from scatter alone
 * @param degreesOfFreedom of that
 * @param stated standard error of R from what was stated
 * @param shared covariance of R with the mean pull of a group; 0 where R was measured by tape
 */
record Ratio(
        Estimate estimate, double scatter, double degreesOfFreedom, double stated, ToDoubleFunction<PinGroup> shared) {
    static Ratio byTape(Estimate estimate, double degreesOfFreedom) {
        return new Ratio(estimate, estimate.standardError(), degreesOfFreedom, 0, group -> 0);
    }

    boolean fromPulls() {
        return stated > 0;
    }

    double value() {
        return estimate.value();
    }

    /** Kilograms on the pin for so large a mean pull. */
    double mass(double pull) {
        return pull * value() / Constants.STANDARD_GRAVITY;
    }
}
