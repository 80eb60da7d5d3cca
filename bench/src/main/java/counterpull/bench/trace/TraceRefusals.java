package counterpull.bench.trace;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** Why a trace says nothing: every reason, each with its sample, value and limit. The limits are ours and catch slips. */
final class TraceRefusals {
    static final int FEWEST_SAMPLES = 10;
    /** Below this a trace is taken as flat, N. */
    static final double LEAST_RANGE = 5;
    /** The largest force that is believed, N: that of a readings file too. */
    static final double MOST_FORCE = 10_000;

    private static final int NAMED = 3;

    private final Trace trace;
    private final List<Remark> remarks = new ArrayList<>();

    private TraceRefusals(Trace trace) {
        this.trace = trace;
    }

    static List<Remark> of(Trace trace) {
        TraceRefusals check = new TraceRefusals(trace);
        check.count();
        check.numbers();
        if (check.remarks.isEmpty()) {
            check.times();
            check.forces();
        }
        return check.remarks;
    }

    private void count() {
        if (trace.size() < FEWEST_SAMPLES) {
            remarks.add(Remark.refuses("too-few-samples", "the trace has ")
                    .then(trace.size(), Kind.COUNT)
                    .then(" samples; at least ")
                    .then(FEWEST_SAMPLES, Kind.COUNT)
                    .then(" are needed"));
        }
    }

    private void numbers() {
        for (int i = 0; i < trace.size(); i++) {
            if (!Double.isFinite(trace.time(i)) || !Double.isFinite(trace.force(i))) {
                remarks.add(Remark.refuses("not-a-number", sample(i) + " is not a number"));
            }
        }
    }

    private void times() {
        int wrong = 0;
        for (int i = 1; i < trace.size(); i++) {
            if (trace.time(i) <= trace.time(i - 1)) {
                wrong++;
                if (wrong <= NAMED) {
                    remarks.add(Remark.refuses("time-not-rising", "time does not rise: " + sample(i) + " is at ")
                            .then(trace.time(i), Kind.TIME)
                            .then(", the one before it at ")
                            .then(trace.time(i - 1), Kind.TIME));
                }
            }
        }
        if (wrong > NAMED) {
            remarks.add(Remark.refuses("time-not-rising", "and at ")
                    .then(wrong - NAMED, Kind.COUNT)
                    .then(" more samples time does not rise"));
        }
        if (wrong == 0 && trace.duration() < Plateau.WINDOW) {
            remarks.add(Remark.refuses("too-short", "the trace lasts ")
                    .then(trace.duration(), Kind.TIME)
                    .then("; a mean over a second needs ")
                    .then(Plateau.WINDOW, Kind.TIME)
                    .then(". If the times are in another unit, say so"));
        }
    }

    private void forces() {
        int highest = 0;
        int lowest = 0;
        for (int i = 0; i < trace.size(); i++) {
            highest = trace.force(i) > trace.force(highest) ? i : highest;
            lowest = trace.force(i) < trace.force(lowest) ? i : lowest;
        }
        double high = trace.force(highest);
        double low = trace.force(lowest);
        if (-low > Math.abs(high) && -low > LEAST_RANGE) {
            remarks.add(Remark.refuses("negative-force", "the force goes below zero, to ")
                    .then(low, Kind.FORCE)
                    .then(" at " + sample(lowest) + ", farther than above it (")
                    .then(high, Kind.FORCE)
                    .then("): turn the sign around if the device counts a pull as negative"));
        } else if (high - low < LEAST_RANGE) {
            remarks.add(Remark.refuses("flat-trace", "the force stays between ")
                    .then(low, Kind.FORCE)
                    .then(" and ")
                    .then(high, Kind.FORCE)
                    .then("; an effort changes it by at least ")
                    .then(LEAST_RANGE, Kind.FORCE));
        } else if (high > MOST_FORCE) {
            remarks.add(Remark.refuses("force-too-large", sample(highest) + " shows ")
                    .then(high, Kind.FORCE)
                    .then(", more than ")
                    .then(MOST_FORCE, Kind.FORCE)
                    .then(": a slip of the decimal sign or of the unit"));
        }
    }

    static String sample(int index) {
        return "sample " + (index + 1);
    }
}
