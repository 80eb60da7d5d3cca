package counterpull.bench.trace;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;

/**
 * Force over time as it was recorded: seconds and newtons, straight between samples. Samples are numbered from 0 here and from 1 where a
 * person is told. Read-only.
 */
public final class Trace {
    private final double[] times;
    private final double[] forces;
    /** Force over time, summed up to each sample, N·s. */
    private final double[] impulse;

    private Trace(double[] times, double[] forces) {
        this.times = times;
        this.forces = forces;
        impulse = new double[times.length];
        for (int i = 1; i < times.length; i++) {
            impulse[i] = impulse[i - 1] + (times[i] - times[i - 1]) * (forces[i - 1] + forces[i]) / 2;
        }
    }

    /**
     * A trace; whether it can be used is for {@link TraceBench} to say.
     *
     * @param times s, as many as forces
     * @param forces N, pushing or pulling against the device above zero
     */
    public static Trace of(double[] times, double[] forces) {
        if (times.length != forces.length) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "number of forces",
                    forces.length,
                    times.length,
                    "",
                    "a trace needs as many forces as times");
        }
        return new Trace(times.clone(), forces.clone());
    }

    /** How many samples. */
    public int size() {
        return times.length;
    }

    /** When a sample was taken, s. */
    public double time(int sample) {
        return times[sample];
    }

    /** What it showed, N. */
    public double force(int sample) {
        return forces[sample];
    }

    /** Time of the first sample, s. */
    public double begin() {
        return times[0];
    }

    /** Time of the last sample, s. */
    public double end() {
        return times[times.length - 1];
    }

    /** Seconds from the first sample to the last. */
    public double duration() {
        return end() - begin();
    }

    /** The last sample taken at that time or before it, but never the very last, so that there is always one after it; 0 before the first. */
    int before(double time) {
        int low = 0;
        int high = times.length - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (times[middle] <= time) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Force at any time inside the trace, N. */
    public double at(double time) {
        return on(before(time), time);
    }

    private double on(int sample, double time) {
        double share = (time - times[sample]) / (times[sample + 1] - times[sample]);
        return forces[sample] + share * (forces[sample + 1] - forces[sample]);
    }

    /** Mean force over a stretch of time, the exact integral of the straight pieces over its length, N. */
    public double mean(double from, double to) {
        return (impulse(to) - impulse(from)) / (to - from);
    }

    private double impulse(double time) {
        int i = before(time);
        return impulse[i] + (time - times[i]) * (forces[i] + on(i, time)) / 2;
    }

    /** Standard deviation of the force about a level over a stretch of time, exact in the same way, N. */
    public double spread(double from, double to, double level) {
        double square = over(from, to, (a, b) -> {
            double one = a - level;
            double other = b - level;
            return (one * one + one * other + other * other) / 3;
        });
        return Math.sqrt(square / (to - from));
    }

    /** Mean of something over one straight piece, from the force at its two ends. */
    private interface Piece {
        double mean(double first, double last);
    }

    private double over(double from, double to, Piece piece) {
        double sum = 0;
        double left = from;
        for (int i = before(from); left < to; i++) {
            double right = i + 2 >= times.length ? to : Math.min(to, times[i + 1]);
            sum += (right - left) * piece.mean(on(i, left), on(i, right));
            left = right;
        }
        return sum;
    }

    /** The longest time without a sample that touches a stretch, s. */
    double longestGap(double from, double to) {
        double longest = 0;
        for (int i = before(from); i + 1 < times.length && (times[i] < to || i == before(from)); i++) {
            longest = Math.max(longest, times[i + 1] - times[i]);
        }
        return longest;
    }
}
