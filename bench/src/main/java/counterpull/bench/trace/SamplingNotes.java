package counterpull.bench.trace;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.List;

/** What the samples' spacing lets a trace tell. */
final class SamplingNotes {
    /** Samples closer than this time an onset well, s; 1000 a second are advised (from memory), a half of that is our mark. */
    static final double FINE = 0.002;

    private SamplingNotes() {}

    static List<Remark> of(TraceFindings findings) {
        double interval = findings.interval();
        boolean none = findings.efforts().stream()
                .flatMap(effort -> effort.rises().stream())
                .noneMatch(Rise::known);
        if (findings.rest().isEmpty() || interval <= FINE * (1 + 1e-6)) {
            return List.of();
        }
        Remark remark = none
                ? Remark.note("too-slow-for-rise", "samples follow each other in ")
                        .then(interval, Kind.TIME)
                        .then(", too far apart for any rate of rise: not known")
                : Remark.note("slow-for-rise", "samples follow each other in ")
                        .then(interval, Kind.TIME)
                        .then("; to time an onset, ")
                        .then(0.001, Kind.TIME)
                        .then(" is advised: take the rates of rise as rough");
        return List.of(remark);
    }
}
