package counterpull.bench.trace;

/**
 * What the device showed before the first effort: nothing, or the limb's own weight.
 *
 * @param mean N
 * @param sd of the samples about it, N
 * @param from s
 * @param to s
 * @param samples how many samples lie in it
 */
public record Rest(double mean, double sd, double from, double to, int samples) {
    /** No more than this much of the trace's beginning is taken as rest, s. */
    static final double LONGEST = 1.0;

    /** Rest of fewer samples has no scatter worth the name. */
    static final int FEWEST = 5;

    /**
     * The trace's beginning: a second, or half the time until the first effort is well under way where that is shorter, so that its slow
     * start does not count as rest.
     */
    static Rest before(Trace trace, double underWay) {
        double from = trace.begin();
        double to = Math.min(from + LONGEST, (from + underWay) / 2);
        int samples = 0;
        double sum = 0;
        while (samples < trace.size() && trace.time(samples) <= to) {
            sum += trace.force(samples++);
        }
        double mean = sum / samples;
        double square = 0;
        for (int i = 0; i < samples; i++) {
            square += (trace.force(i) - mean) * (trace.force(i) - mean);
        }
        return new Rest(mean, samples < 2 ? 0 : Math.sqrt(square / (samples - 1)), from, to, samples);
    }
}
