package counterpull.bench.trace;

import java.util.Arrays;

/**
 * Where the mean over one second is largest. The mean as a function of the second's beginning t is ∫ f from t to t + 1; its slope,
 * f(t + 1) − f(t), is straight between the times at which either end meets a sample. So the largest mean lies at such a time or where the
 * slope passes zero between two of them: both are tried, and nothing is sampled.
 */
final class BestSecond {
    private static final double ROUNDING = 1e-12;
    private final Trace trace;
    private final double first;
    private final double last;
    private double best = Double.NEGATIVE_INFINITY;
    private double at;

    private BestSecond(Trace trace, double from, double to) {
        this.trace = trace;
        first = from;
        last = to - Plateau.WINDOW;
    }

    /** The best second inside a stretch that is at least that long. */
    static Plateau in(Trace trace, double from, double to) {
        BestSecond search = new BestSecond(trace, from, to);
        search.everywhere();
        double mean = search.best;
        double end = search.at + Plateau.WINDOW;
        double sd = trace.spread(search.at, end, mean);
        return new Plateau(mean, search.at, end, sd / Math.abs(mean));
    }

    private void everywhere() {
        double[] starts = starts();
        tryAt(starts[0]);
        for (int i = 1; i < starts.length; i++) {
            double before = slope(starts[i - 1]);
            double after = slope(starts[i]);
            if (before > 0 && after < 0) {
                tryAt(starts[i - 1] + (starts[i] - starts[i - 1]) * before / (before - after));
            }
            tryAt(starts[i]);
        }
    }

    private double slope(double start) {
        return trace.at(start + Plateau.WINDOW) - trace.at(start);
    }

    private void tryAt(double start) {
        double mean = trace.mean(start, start + Plateau.WINDOW);
        // of seconds that differ by rounding alone the first is taken
        if (!(mean <= best + ROUNDING * Math.abs(mean))) {
            best = mean;
            at = start;
        }
    }

    /** Every beginning at which one end of the second meets a sample, and the two outermost. */
    private double[] starts() {
        double[] all = new double[2 * trace.size() + 2];
        int count = 0;
        all[count++] = first;
        all[count++] = Math.max(first, last);
        for (int i = 0; i < trace.size(); i++) {
            for (double start : new double[] {trace.time(i), trace.time(i) - Plateau.WINDOW}) {
                if (start > first && start < last) {
                    all[count++] = start;
                }
            }
        }
        Arrays.sort(all, 0, count);
        return Arrays.copyOf(all, count);
    }
}
