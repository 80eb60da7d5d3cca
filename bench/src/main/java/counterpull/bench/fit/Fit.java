package counterpull.bench.fit;

import counterpull.bench.Estimate;
import counterpull.bench.Student;
import java.util.function.ToDoubleFunction;

/** What came of a {@link Regression}: parameters, how sure they are, and what is left over. Read-only. */
public final class Fit {
    /** Cube root of the rounding of a double. */
    private static final double STEP = 6e-6;

    private final Regression of;
    private final Solution free;
    private final Solution inside;
    private final boolean[] held;

    Fit(Regression of, Solution free, Solution inside, boolean[] held) {
        this.of = of;
        this.free = free;
        this.inside = inside;
        this.held = held;
    }

    /** Parameters inside their limits. */
    public double[] parameters() {
        return inside.at.clone();
    }

    /** One parameter; its interval is that of the fit without limits, cut off at the limit. */
    public Estimate estimate(int parameter) {
        double half = Student.twoSided95(degreesOfFreedom(free, unit(parameter))) * free.standardError(parameter);
        double limit = of.lowest(parameter);
        double value = inside.at[parameter];
        Estimate.Standing standing = held[parameter] ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE;
        return new Estimate(
                value,
                free.standardError(parameter),
                Math.max(limit, free.at[parameter] - half),
                Math.max(limit, free.at[parameter] + half),
                standing);
    }

    /** Anything that follows from the parameters, by its slopes (the delta method); around the value inside the limits. */
    public Estimate estimate(ToDoubleFunction<double[]> function) {
        double[] slope = slope(function, inside);
        double variance = variance(inside, slope);
        return Estimate.student(
                function.applyAsDouble(inside.at), Math.sqrt(variance), degreesOfFreedom(inside, slope));
    }

    /** How many degrees of freedom the standard error of something that follows from the parameters has. */
    public double degreesOfFreedom(ToDoubleFunction<double[]> function) {
        return degreesOfFreedom(inside, slope(function, inside));
    }

    private double[] unit(int parameter) {
        double[] unit = new double[held.length];
        unit[parameter] = 1;
        return unit;
    }

    private static double variance(Solution solution, double[] slope) {
        double variance = 0;
        double[] moved = solution.covariance.operate(slope);
        for (int i = 0; i < slope.length; i++) {
            variance += slope[i] * moved[i];
        }
        return Math.max(0, variance);
    }

    /** Welch–Satterthwaite: what is known beforehand about parameter k adds (C slope)²ₖ/sd², the scatter of the readings the rest. */
    private double degreesOfFreedom(Solution solution, double[] slope) {
        double variance = variance(solution, slope);
        double[] moved = solution.covariance.operate(slope);
        double scatter = variance;
        double sum = 0;
        for (int k = 0; k < moved.length; k++) {
            double part = moved[k] * moved[k] / (of.knownSd(k) * of.knownSd(k));
            scatter -= part;
            sum += part * part / of.knownDegrees(k);
        }
        sum += scatter * scatter / solution.degreesOfFreedom;
        return sum > 0 ? variance * variance / sum : Double.POSITIVE_INFINITY;
    }

    /**
     * The same where a limit may have been met: the interval is that of the fit without limits, widened to hold the value inside them, so
     * that it keeps at least its 95 % for every truth that is possible. Only for functions that still mean something past the limits.
     */
    public Estimate freely(ToDoubleFunction<double[]> function) {
        double value = function.applyAsDouble(inside.at);
        double middle = function.applyAsDouble(free.at);
        double[] slope = slope(function, free);
        double error = Math.sqrt(variance(free, slope));
        double half = Student.twoSided95(degreesOfFreedom(free, slope)) * error;
        return new Estimate(
                value,
                error,
                Math.min(value, middle - half),
                Math.max(value, middle + half),
                free() < inside.at.length ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    private static double[] slope(ToDoubleFunction<double[]> function, Solution around) {
        double[] at = around.at.clone();
        double[] slope = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            double step = STEP * Math.max(Math.abs(at[k]), STEP);
            double middle = at[k];
            at[k] = middle + step;
            double above = function.applyAsDouble(at);
            at[k] = middle - step;
            slope[k] = (above - function.applyAsDouble(at)) / (2 * step);
            at[k] = middle;
        }
        return slope;
    }

    /** (measured − fitted) / its own spread, in the readings' SI unit where the spreads are 1. */
    public double residual(int reading) {
        return of.residual(inside.at, reading);
    }

    /** Σ of squared residuals. */
    public double sumOfSquares() {
        return inside.sumOfSquares;
    }

    /** One standard deviation of a reading of spread 1: stated, or from the scatter. */
    public double noise() {
        return inside.noise;
    }

    /** Readings less what the parameters use up; infinite where the noise is stated. */
    public double degreesOfFreedom() {
        return inside.degreesOfFreedom;
    }

    /** How many parameters the readings chose. */
    public int free() {
        int count = 0;
        for (boolean each : held) {
            count += each ? 0 : 1;
        }
        return count;
    }

    /** Standard deviations on each side that hold 95 %, where nothing was known beforehand. */
    public double quantile() {
        return Student.twoSided95(free.degreesOfFreedom);
    }
}
