package counterpull.bench.trace;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** What makes a trace's findings doubtful, and what is good to know about them. The limits are ours where no source stands beside them. */
final class TraceDoubts {
    /** An effort of a grown limb against a pad is seldom weaker than this, N. */
    static final double WEAK = 60;
    /** A trace is seldom longer than this, s. */
    static final double LONG = 600;
    /** So many usual intervals without a sample are a gap. */
    static final double GAP = 5;
    /** Below zero by more than this share of the highest force. */
    static final double BELOW_ZERO = 0.1;
    /** A sample higher than both its neighbours by this share is a spike. */
    static final double SPIKE = 0.3;
    /** The highest force standing unchanged for so long, s, is taken as the scale's end. */
    static final double STANDS = 0.1;
    /** And for so many samples. */
    static final int STANDS_SAMPLES = 8;

    private final Trace trace;
    private final TraceFindings findings;
    private final List<Remark> remarks = new ArrayList<>();

    private TraceDoubts(Trace trace, TraceFindings findings) {
        this.trace = trace;
        this.findings = findings;
    }

    static List<Remark> of(Trace trace, TraceFindings findings) {
        TraceDoubts check = new TraceDoubts(trace, findings);
        check.units();
        check.gaps();
        check.belowZero();
        findings.efforts().forEach(check::spike);
        check.clipped();
        check.remarks.addAll(RestDoubts.of(trace, findings));
        findings.efforts().forEach(effort -> check.remarks.addAll(PlateauDoubts.of(trace, effort)));
        check.remarks.addAll(SamplingNotes.of(findings));
        check.weaker();
        return check.remarks;
    }

    private double highest() {
        return findings.efforts().stream()
                .mapToDouble(effort -> effort.peak().force())
                .max()
                .orElseThrow();
    }

    private void units() {
        if (highest() < WEAK) {
            remarks.add(Remark.doubts("kilograms", "the highest force is ")
                    .then(highest(), Kind.FORCE)
                    .then(", less than ")
                    .then(WEAK, Kind.FORCE)
                    .then(": if the device shows kilograms, its unit is kgf and this would be ")
                    .then(highest() * 9.80665, Kind.FORCE));
        }
        if (trace.duration() > LONG) {
            remarks.add(Remark.doubts("long-trace", "the trace lasts ")
                    .then(trace.duration(), Kind.TIME)
                    .then(", more than ")
                    .then(LONG, Kind.TIME)
                    .then(": are its times milliseconds?"));
        }
    }

    private void gaps() {
        for (int i = 1; i < trace.size(); i++) {
            double step = trace.time(i) - trace.time(i - 1);
            if (step > GAP * findings.interval()) {
                remarks.add(Remark.doubts("gap", "nothing was recorded for ")
                        .then(step, Kind.TIME)
                        .then(" before " + TraceRefusals.sample(i) + ", where samples usually follow each other in ")
                        .then(findings.interval(), Kind.TIME));
            }
        }
    }

    private void belowZero() {
        int lowest = 0;
        for (int i = 0; i < trace.size(); i++) {
            lowest = trace.force(i) < trace.force(lowest) ? i : lowest;
        }
        if (-trace.force(lowest) > BELOW_ZERO * highest()) {
            remarks.add(Remark.doubts("below-zero", "the force goes below zero, to ")
                    .then(trace.force(lowest), Kind.FORCE)
                    .then(" at " + TraceRefusals.sample(lowest) + ": was the device set to zero?"));
        }
    }

    private void spike(Effort effort) {
        int at = effort.peak().sample();
        double before = at > 0 ? trace.force(at - 1) : effort.peak().force();
        double after =
                at + 1 < trace.size() ? trace.force(at + 1) : effort.peak().force();
        double next = Math.max(before, after);
        if (next < (1 - SPIKE) * effort.peak().force()) {
            remarks.add(Remark.doubts("spike", TraceRefusals.sample(at) + " stands alone: it shows ")
                    .then(effort.peak().force(), Kind.FORCE)
                    .then(" and its neighbours no more than ")
                    .then(next, Kind.FORCE)
                    .then("; a knock, not a peak"));
        }
    }

    private void clipped() {
        double highest = highest();
        int from = -1;
        for (int i = 0; i < trace.size(); i++) {
            boolean there = trace.force(i) == highest;
            from = there ? (from < 0 ? i : from) : -1;
            boolean ends = there && (i + 1 == trace.size() || trace.force(i + 1) != highest);
            if (ends && i - from + 1 >= STANDS_SAMPLES && trace.time(i) - trace.time(from) >= STANDS) {
                remarks.add(Remark.doubts("clipped", "from " + TraceRefusals.sample(from) + " on ")
                        .then(i - from + 1, Kind.COUNT)
                        .then(" samples show ")
                        .then(highest, Kind.FORCE)
                        .then(
                                " to the last digit: if that is where the device's scale ends, peak and mean are at least this and"
                                        + " not known"));
            }
        }
    }

    private void weaker() {
        for (Effort.Stretch bump : EffortsApart.weakerThanEfforts(trace)) {
            remarks.add(
                    Remark.note("weak-bump", "around ")
                            .then((bump.from() + bump.to()) / 2, Kind.TIME)
                            .then(
                                    " the force rose, and less than half as high as in the strongest effort: not counted as one"));
        }
    }
}
