package counterpull.bench;

import counterpull.engine.Require;

/**
 * A number found from readings, SI, and how sure it is.
 *
 * @param value the most likely value inside its limits
 * @param standardError one standard deviation of it
 * @param low lower end of the 95 % interval
 * @param high upper end of the 95 % interval
 * @param standing whether the readings chose it, or a limit of what is possible did
 */
public record Estimate(double value, double standardError, double low, double high, Standing standing) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);

    /** What decided a value. */
    public enum Standing {
        /** The readings. */
        FREE,
        /** The readings point past what is possible (a friction below zero): the limit itself is taken. */
        AT_LIMIT
    }

    public Estimate {
        Require.finite(value, "an estimate", "");
        Require.within(standardError, NOT_NEGATIVE, "standard error of an estimate", "");
    }

    /** A value whose error is normal with a known standard deviation. */
    public static Estimate normal(double value, double standardError) {
        double half = Student.TWO_SIDED_95 * standardError;
        return new Estimate(value, standardError, value - half, value + half, Standing.FREE);
    }

    /** A value whose standard deviation was itself estimated, with so many degrees of freedom. */
    public static Estimate student(double value, double standardError, double degreesOfFreedom) {
        double half = Student.twoSided95(degreesOfFreedom) * standardError;
        return new Estimate(value, standardError, value - half, value + half, Standing.FREE);
    }

    /** The same in another unit, or times a constant that is known exactly. */
    public Estimate times(double factor) {
        double one = low * factor;
        double other = high * factor;
        return new Estimate(
                value * factor, standardError * Math.abs(factor), Math.min(one, other), Math.max(one, other), standing);
    }

    /** Whether the interval holds a value. */
    public boolean holds(double truth) {
        return low <= truth && truth <= high;
    }

    /** Half the width of the interval. */
    public double halfWidth() {
        return (high - low) / 2;
    }

    /** Standard error over the size of the value. */
    public double relative() {
        return standardError / Math.abs(value);
    }
}
