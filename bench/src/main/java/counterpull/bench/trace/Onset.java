package counterpull.bench.trace;

/**
 * When an effort began: the last time before it was under way at which the force passed a threshold upward. The threshold is the resting
 * mean + the larger of {@value #SDS} of its standard deviations and {@value #SHARE} of the effort's rise above rest.
 *
 * <p>Source: three standard deviations are "often used" (Maffiuletti, Aagaard, Blazevich, Folland, Tillin and Duchateau 2016, Eur J Appl
 * Physiol 116:1091-1116, legend of figure 6); 2 to 5 % of the maximum is in use too (from memory). Taking the larger of the two is ours: a
 * recording almost without noise has an onset that way that does not hang on its last digit.
 *
 * @param time s
 * @param threshold N
 */
public record Onset(double time, double threshold) {
    /** How many resting standard deviations. */
    public static final double SDS = 3;

    /** Which share of the rise, at least. */
    public static final double SHARE = 0.02;

    static double threshold(Rest rest, double peak) {
        return rest.mean() + Math.max(SDS * rest.sd(), SHARE * (peak - rest.mean()));
    }

    /** Walks back from a time at which the force is above the threshold; the trace's beginning where it always is. */
    static Onset backFrom(Trace trace, double underWay, double threshold) {
        int i = trace.before(underWay);
        while (i > 0 && trace.force(i) > threshold) {
            i--;
        }
        double low = trace.force(i);
        double high = trace.force(i + 1);
        double share = high > low && low <= threshold ? (threshold - low) / (high - low) : 0;
        return new Onset(trace.time(i) + share * (trace.time(i + 1) - trace.time(i)), threshold);
    }
}
