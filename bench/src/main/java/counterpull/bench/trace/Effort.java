package counterpull.bench.trace;

import java.util.List;
import java.util.Optional;

/**
 * One effort in a trace. Forces are as the device showed them: nothing is taken off for rest.
 *
 * @param number counted from 1
 * @param stretch when it was under way
 * @param peak its highest sample
 * @param plateau its best second; empty where it lasted less than that
 * @param onset when it began; empty where the trace shows no rest before it
 * @param rises over the windows from its onset, in their order; empty without an onset
 * @param steepest the fastest rise over {@link TraceBench#STEEPEST}; not known where samples are too far apart
 */
public record Effort(
        int number,
        Stretch stretch,
        Peak peak,
        Optional<Plateau> plateau,
        Optional<Onset> onset,
        List<Rise> rises,
        Rise steepest) {
    public Effort {
        rises = List.copyOf(rises);
    }

    /**
     * From when to when.
     *
     * @param from s
     * @param to s
     */
    public record Stretch(double from, double to) {
        double length() {
            return to - from;
        }

        boolean meets(Stretch other) {
            return from <= other.to && other.from <= to;
        }
    }

    /**
     * The highest sample.
     *
     * @param sample which, counted from 0
     * @param time s
     * @param force N
     */
    public record Peak(int sample, double time, double force) {}
}
