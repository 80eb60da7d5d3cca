package counterpull.bench.trace;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** What is doubtful about one effort's best second. */
final class PlateauDoubts {
    /** A plateau's standard deviation over its mean stays below this. */
    static final double STEADY = 0.05;
    /** The longest time between samples inside a best second, s. */
    static final double LONGEST_INTERVAL = 0.25;

    private PlateauDoubts() {}

    static List<Remark> of(Trace trace, Effort effort) {
        List<Remark> remarks = new ArrayList<>();
        String name = "effort " + effort.number();
        if (effort.plateau().isEmpty()) {
            remarks.add(Remark.doubts("effort-too-short", name + " lasted ")
                    .then(effort.stretch().length(), Kind.TIME)
                    .then("; a mean over a second needs ")
                    .then(Plateau.WINDOW, Kind.TIME)
                    .then(", so only its peak is known"));
            return remarks;
        }
        Plateau plateau = effort.plateau().get();
        if (plateau.steadiness() > STEADY) {
            remarks.add(Remark.doubts("unsteady", "the best second of " + name + " swings by ")
                    .then(plateau.steadiness(), Kind.SHARE)
                    .then(" of its mean (one standard deviation); below ")
                    .then(STEADY, Kind.SHARE)
                    .then(" it counts as held"));
        }
        double gap = trace.longestGap(plateau.from(), plateau.to());
        if (gap > LONGEST_INTERVAL) {
            remarks.add(
                    Remark.doubts("thin-plateau", "inside the best second of " + name + " nothing was recorded for ")
                            .then(gap, Kind.TIME)
                            .then("; its mean needs a sample at least every ")
                            .then(LONGEST_INTERVAL, Kind.TIME));
        }
        if (plateau.to() >= trace.end() || plateau.from() <= trace.begin()) {
            remarks.add(Remark.doubts(
                    "plateau-at-edge",
                    "the best second of " + name
                            + " touches the trace's edge: the effort may have been better outside of it"));
        }
        return remarks;
    }
}
