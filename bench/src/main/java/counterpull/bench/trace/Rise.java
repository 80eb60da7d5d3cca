package counterpull.bench.trace;

/**
 * How fast the force rose, N/s: (force at the end of a window − force at its beginning) / its length.
 *
 * @param from the window's beginning, s
 * @param window the window's length, s
 * @param rate N/s; NaN where the samples are too far apart or the trace ends before the window does: not known
 */
public record Rise(double from, double window, double rate) {
    /** A window needs this many samples: with fewer, the time of the onset alone could be wrong by more than a fifth of it. */
    public static final int SAMPLES_IN_A_WINDOW = 5;

    /** Whether the trace tells it. */
    public boolean known() {
        return !Double.isNaN(rate);
    }

    /** The longest time between two samples with which a window can be told, s. */
    public static double longestInterval(double window) {
        return window / SAMPLES_IN_A_WINDOW;
    }

    /** Over a window that begins at a time. */
    static Rise over(Trace trace, double from, double window) {
        // a whole interval counts as not too long though its ends are rounded
        boolean told = from + window <= trace.end() + 1e-9
                && trace.longestGap(from, from + window) <= longestInterval(window) * (1 + 1e-6);
        return new Rise(
                from,
                window,
                told ? (trace.at(Math.min(from + window, trace.end())) - trace.at(from)) / window : Double.NaN);
    }

    /**
     * The largest over a window of that length between two times; exact, since a difference of two straight pieces is largest where one
     * of the window's ends meets a sample.
     */
    static Rise steepest(Trace trace, double from, double to, double window) {
        Rise best = new Rise(from, window, Double.NaN);
        for (int i = 0; i < trace.size(); i++) {
            for (double start : new double[] {trace.time(i), trace.time(i) - window}) {
                if (start >= from && start <= to) {
                    best = best.orSteeper(over(trace, start, window));
                }
            }
        }
        return best.orSteeper(over(trace, from, window));
    }

    private Rise orSteeper(Rise other) {
        return other.known() && !(rate >= other.rate) ? other : this;
    }
}
