package counterpull.bench.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tells several efforts in one trace apart. Low is the level that the force stays below a twentieth of the time, high the highest sample. An
 * effort begins where the force passes half the way from low to high; it ends where the force then stays below a quarter of that way for at
 * least half a second. The rule is ours.
 */
final class EffortsApart {
    static final double BEGINS = 0.5;
    static final double ENDS = 0.25;
    static final double PAUSE = 0.5;
    private static final double BUMP = 0.2;
    private static final double LOW_SHARE = 0.05;

    private final Trace trace;
    private final double begins;
    private final double ends;

    private EffortsApart(Trace trace) {
        this.trace = trace;
        double low = level(trace, LOW_SHARE);
        double high = level(trace, 1);
        begins = low + BEGINS * (high - low);
        ends = low + ENDS * (high - low);
    }

    /** The stretches above a quarter of the way around each effort. */
    static List<Effort.Stretch> of(Trace trace) {
        return new EffortsApart(trace).stretches();
    }

    /** Stretches above a quarter of the way that never reach half of it, each at least a fifth of a second long. */
    static List<Effort.Stretch> weakerThanEfforts(Trace trace) {
        return new EffortsApart(trace).weaker();
    }

    private List<Effort.Stretch> weaker() {
        List<Effort.Stretch> efforts = stretches();
        List<Effort.Stretch> found = new ArrayList<>();
        for (int i = 0; i < trace.size(); i++) {
            if (trace.force(i) > ends && (i == 0 || trace.force(i - 1) <= ends)) {
                int last = lastOf(i);
                Effort.Stretch bump = new Effort.Stretch(upward(i), downward(last));
                if (bump.length() >= BUMP && efforts.stream().noneMatch(effort -> effort.meets(bump))) {
                    found.add(bump);
                }
                i = last;
            }
        }
        return found;
    }

    /** The level that the force stays at or below for that share of the samples. */
    private static double level(Trace trace, double share) {
        double[] sorted = new double[trace.size()];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = trace.force(i);
        }
        Arrays.sort(sorted);
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    private List<Effort.Stretch> stretches() {
        List<Effort.Stretch> found = new ArrayList<>();
        int i = 0;
        while (i < trace.size()) {
            if (trace.force(i) > begins) {
                int last = lastOf(i);
                found.add(new Effort.Stretch(upward(i), downward(last)));
                i = last;
            }
            i++;
        }
        return found;
    }

    /** The last sample above the lower level before a pause. */
    private int lastOf(int from) {
        int last = from;
        for (int i = from + 1; i < trace.size(); i++) {
            if (trace.force(i) > ends) {
                if (i > last + 1 && crossing(i - 1) - crossing(last) >= PAUSE) {
                    return last;
                }
                last = i;
            }
        }
        return last;
    }

    private double upward(int first) {
        int i = first;
        while (i > 0 && trace.force(i - 1) > ends) {
            i--;
        }
        return i == 0 ? trace.begin() : crossing(i - 1);
    }

    private double downward(int last) {
        return last == trace.size() - 1 ? trace.end() : crossing(last);
    }

    /** When the straight piece after a sample meets the lower level. */
    private double crossing(int sample) {
        double share = (ends - trace.force(sample)) / (trace.force(sample + 1) - trace.force(sample));
        return trace.time(sample) + share * (trace.time(sample + 1) - trace.time(sample));
    }
}
