package counterpull.engine.uncertainty;

/**
 * How often something happened in a number of independent draws.
 *
 * @param times how often
 * @param of in how many draws
 */
public record Chance(int times, int of) {
    private static final double NINETY_FIVE_PERCENT_OF_NONE = 3;

    /** The share; NaN of no draws. */
    public double value() {
        return (double) times / of;
    }

    /** Standard error of the share by the draws being so many only: √(p(1 − p)/n). */
    public double error() {
        return Math.sqrt(value() * (1 - value()) / of);
    }

    /** Whether it never happened: then all that can be said is that the chance is below {@link #most}. */
    public boolean never() {
        return times == 0;
    }

    /** What the chance is below with 95 % where it never happened: 3/n (from memory: the rule of three). */
    public double most() {
        return NINETY_FIVE_PERCENT_OF_NONE / of;
    }
}
