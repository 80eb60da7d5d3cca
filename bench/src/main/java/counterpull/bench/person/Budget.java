package counterpull.bench.person;

/**
 * Independent standard uncertainties combined: the root of the sum of squares, and the effective degrees of freedom of the
 * Welch–Satterthwaite formula. Source: JCGM 100:2008, equations 10 and G.2b; from memory. A part that was not estimated from this
 * person's own repeats has infinitely many.
 *
 * @param variance sum of the squares
 * @param fourth sum of fourth powers, each over its degrees of freedom
 */
public record Budget(double variance, double fourth) {
    static Budget none() {
        return new Budget(0, 0);
    }

    /** A part whose size is known. */
    Budget with(double sd) {
        return new Budget(variance + sd * sd, fourth);
    }

    /** A part whose size was estimated with so many degrees of freedom. */
    Budget with(double sd, double degreesOfFreedom) {
        double square = sd * sd;
        return new Budget(variance + square, fourth + square * square / degreesOfFreedom);
    }

    /** The mean of repeated readings. */
    Budget with(Scatter scatter) {
        return scatter.repeated() ? with(scatter.standardErrorOfMean(), scatter.count() - 1) : this;
    }

    /** Both, independent of each other. */
    Budget and(Budget other) {
        return new Budget(variance + other.variance, fourth + other.fourth);
    }

    /** The combined standard uncertainty. */
    public double sd() {
        return Math.sqrt(variance);
    }

    /** Effective degrees of freedom; infinite where nothing was estimated from repeats. */
    public double degreesOfFreedom() {
        return fourth == 0 ? Double.POSITIVE_INFINITY : variance * variance / fourth;
    }
}
