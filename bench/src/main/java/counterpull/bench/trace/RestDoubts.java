package counterpull.bench.trace;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** What is doubtful about the rest before the first effort. */
final class RestDoubts {
    /** How long before an onset the force should still be at rest, s (Maffiuletti et al. 2016, legend of figure 6). */
    static final double STEADY_BEFORE = 0.2;
    /** A limb resting on a pad seldom weighs more than this share of what it can do. */
    static final double HEAVY = 0.3;

    private RestDoubts() {}

    static List<Remark> of(Trace trace, TraceFindings findings) {
        List<Remark> remarks = new ArrayList<>();
        if (findings.rest().isEmpty()) {
            remarks.add(Remark.doubts("no-rest", "the trace shows no rest before the first effort (fewer than ")
                    .then(Rest.FEWEST, Kind.COUNT)
                    .then(" samples): onset and rate of rise are not known; start recording a second or two earlier"));
            return remarks;
        }
        Rest rest = findings.rest().get();
        double peak = findings.best().peak().force();
        if (Math.abs(rest.mean()) > HEAVY * peak) {
            remarks.add(Remark.doubts("heavy-rest", "before the first effort the device shows ")
                    .then(rest.mean(), Kind.FORCE)
                    .then(", a large part of the peak (")
                    .then(peak, Kind.FORCE)
                    .then("): was somebody pushing already?"));
        }
        findings.efforts().stream()
                .filter(effort -> moves(trace, rest, effort))
                .forEach(effort -> remarks.add(moving(trace, rest, effort)));
        return remarks;
    }

    /** A shift beyond the threshold's distance from rest in the fifth of a second before the onset. */
    private static boolean moves(Trace trace, Rest rest, Effort effort) {
        Onset onset = effort.onset().orElseThrow();
        return before(trace, onset) < onset.time()
                && Math.abs(trace.mean(before(trace, onset), onset.time()) - rest.mean())
                        > onset.threshold() - rest.mean();
    }

    private static double before(Trace trace, Onset onset) {
        return Math.max(trace.begin(), onset.time() - STEADY_BEFORE);
    }

    private static Remark moving(Trace trace, Rest rest, Effort effort) {
        Onset onset = effort.onset().orElseThrow();
        return Remark.doubts("rest-moves", "just before effort " + effort.number() + " the device shows ")
                .then(trace.mean(before(trace, onset), onset.time()), Kind.FORCE)
                .then(" and not the ")
                .then(rest.mean(), Kind.FORCE)
                .then(" of the rest at the beginning: its onset and rate of rise hang on that");
    }
}
