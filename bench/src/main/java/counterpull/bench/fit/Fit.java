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
        double[] slope = new double[inside.at.length];
        slope[parameter] = 1;
        Spread spread = spread(slope, free);
        double limit = of.lowest(parameter);
        double middle = free.at[parameter];
        return new Estimate(
                inside.at[parameter],
                spread.error(),
                Math.max(limit, middle - spread.half()),
                Math.max(limit, middle + spread.half()),
                held[parameter] ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    /** Anything that follows from the parameters, by its slopes (the delta method); around the value inside the limits. */
    public Estimate estimate(ToDoubleFunction<double[]> function) {
        double value = function.applyAsDouble(inside.at);
        Spread spread = spread(slope(function, inside.at), inside);
        return new Estimate(
                value, spread.error(), value - spread.half(), value + spread.half(), Estimate.Standing.FREE);
    }

    /**
     * The same where a limit may have been met: the interval is that of the fit without limits, widened to hold the value inside them, so
     * that it keeps at least its 95 % for every truth that is possible. Only for functions that still mean something past the limits.
     */
    public Estimate freely(ToDoubleFunction<double[]> function) {
        double value = function.applyAsDouble(inside.at);
        double middle = function.applyAsDouble(free.at);
        Spread spread = spread(slope(function, free.at), free);
        return new Estimate(
                value,
                spread.error(),
                Math.min(value, middle - spread.half()),
                Math.max(value, middle + spread.half()),
                free() < inside.at.length ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    /** How many degrees of freedom the standard error of something that follows from the parameters has (JCGM 100:2008, G.4.1). */
    public double degreesOfFreedom(ToDoubleFunction<double[]> function) {
        return degreesOfFreedom(new Shares(slope(function, inside.at), inside), inside);
    }

    private double degreesOfFreedom(Shares shares, Solution around) {
        double sum = shares.scatter * shares.scatter / around.degreesOfFreedom;
        for (int k = 0; k < shares.known.length; k++) {
            sum += shares.known[k] * shares.known[k] / of.knownDegrees(k);
        }
        return sum > 0 ? shares.variance * shares.variance / sum : Double.POSITIVE_INFINITY;
    }

    private record Spread(double error, double half) {}

    /**
     * Where what is known beforehand meets scatter that few readings show, the formula of Welch and Satterthwaite (JCGM 100:2008, G.4) gave too
     * narrow intervals, and each share with its own quantile, squares added, too wide ones: half way between them held 95 % in simulation.
     */
    private Spread spread(double[] slope, Solution around) {
        Shares shares = new Shares(slope, around);
        double square = squaredQuantile(around.degreesOfFreedom) * shares.scatter;
        for (int k = 0; k < shares.known.length; k++) {
            square += shares.known[k] > 0 ? squaredQuantile(of.knownDegrees(k)) * shares.known[k] : 0;
        }
        double error = Math.sqrt(shares.variance);
        double combined = error * Student.twoSided95(degreesOfFreedom(shares, around));
        return new Spread(error, (Math.sqrt(square) + combined) / 2);
    }

    private static double squaredQuantile(double degreesOfFreedom) {
        double quantile = Student.twoSided95(degreesOfFreedom);
        return quantile * quantile;
    }

    /** The variance of something that follows from the parameters: what is known beforehand about each adds (C slope)²/sd², the scatter the rest. */
    private final class Shares {
        private final double variance;
        private final double scatter;
        private final double[] known;

        Shares(double[] slope, Solution around) {
            known = around.covariance.operate(slope);
            double whole = 0;
            double sum = 0;
            for (int k = 0; k < known.length; k++) {
                whole += slope[k] * known[k];
                double part = known[k] / of.knownSd(k);
                known[k] = part * part;
                sum += known[k];
            }
            variance = Math.max(0, whole);
            scatter = Math.max(0, variance - sum);
        }
    }

    private double[] slope(ToDoubleFunction<double[]> function, double[] from) {
        double[] at = from.clone();
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

    /** Standard deviations on each side that hold 95 %. */
    public double quantile() {
        return Student.twoSided95(free.degreesOfFreedom);
    }
}
