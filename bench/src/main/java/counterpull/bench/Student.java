package counterpull.bench;

import org.hipparchus.distribution.continuous.TDistribution;

/** Quantiles of Student's distribution, from a general-purpose library. */
public final class Student {
    /** Standard deviations on each side of the middle that hold 95 % of a normal distribution. */
    public static final double TWO_SIDED_95 = 1.959963984540054;

    /** From here on the difference to the normal distribution is below 1e-5 of the quantile. */
    private static final double AS_GOOD_AS_NORMAL = 2e5;

    private Student() {}

    /** Standard deviations on each side that hold 95 %; an infinite number of degrees of freedom gives the normal one. */
    public static double twoSided95(double degreesOfFreedom) {
        return degreesOfFreedom > AS_GOOD_AS_NORMAL
                ? TWO_SIDED_95
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.975);
    }
}
