package counterpull.report.bench;

import counterpull.bench.trace.Effort;
import counterpull.bench.trace.Rise;
import counterpull.bench.trace.Trace;
import counterpull.bench.trace.TraceFindings;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Look;
import counterpull.picture.Range;
import counterpull.picture.Series;
import counterpull.picture.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Force against time: the whole trace, and the rise of its best effort from close by. */
final class TraceCharts {
    private static final Chart.Measure FORCE = new Chart.Measure(Chart.Quantity.FORCE, "force on the device");
    /** Slices of time of which the lowest and the highest sample are drawn: more than a screen has columns. */
    private static final int SLICES = 600;

    private static final double BEFORE_ONSET = 0.1;
    private static final double AFTER_ONSET = 0.4;

    private final Trace trace;
    private final TraceFindings findings;

    TraceCharts(Trace trace, TraceFindings findings) {
        this.trace = trace;
        this.findings = findings;
    }

    List<BenchSection.Captioned> all() {
        List<BenchSection.Captioned> charts = new ArrayList<>();
        charts.add(new BenchSection.Captioned(
                whole(),
                "The whole trace. Hatched: the best second of each effort; ring: the peak of the best one. The fine line is the force"
                        + " at rest."));
        findings.best()
                .onset()
                .ifPresent(
                        onset -> charts.add(
                                new BenchSection.Captioned(
                                        rise(onset.time()),
                                        "How effort " + findings.best().number()
                                                + " rose. Hatched: the first 200 ms from the onset, over which the rate"
                                                + " of rise is taken; the onset is where the force last passes the threshold upward.")));
        return charts;
    }

    private Chart whole() {
        List<Layer> layers = new ArrayList<>();
        for (Effort effort : findings.efforts()) {
            effort.plateau()
                    .ifPresent(plateau -> layers.add(new Layer.Stretch(
                            plateau.from() - trace.begin(),
                            plateau.to() - trace.begin(),
                            "effort " + effort.number())));
        }
        rest(layers, 0, trace.duration());
        layers.add(curve(trace.begin(), trace.end()));
        Effort.Peak peak = findings.best().peak();
        layers.add(new Layer.Mark(peak.time() - trace.begin(), peak.force(), "peak"));
        return chart("Force over time", layers, Range.between(Coordinate.TIME, 0, trace.duration()));
    }

    private Chart rise(double onset) {
        double from = Math.max(trace.begin(), onset - BEFORE_ONSET);
        double to = Math.min(trace.end(), onset + AFTER_ONSET);
        List<Layer> layers = new ArrayList<>();
        List<Rise> rises = findings.best().rises();
        Rise last = rises.get(rises.size() - 1);
        layers.add(new Layer.Stretch(onset - trace.begin(), onset + last.window() - trace.begin(), ""));
        rest(layers, from - trace.begin(), to - trace.begin());
        layers.add(curve(from, to));
        layers.add(new Layer.Mark(onset - trace.begin(), trace.at(onset), "onset"));
        Range range = Range.between(Coordinate.TIME, from - trace.begin(), to - trace.begin());
        return chart("The rise of effort " + findings.best().number(), layers, range);
    }

    private void rest(List<Layer> layers, double from, double to) {
        findings.rest()
                .ifPresent(rest -> layers.add(new Layer.Curve(
                        new Series(new double[] {from, to}, new double[] {rest.mean(), rest.mean()}),
                        Look.of(Ink.TODAY, Stroke.TODAY),
                        "at rest")));
    }

    private static Chart chart(String title, List<Layer> layers, Range range) {
        return new Chart(title, FORCE, range, layers, OptionalInt.empty());
    }

    /** The curve between two times, thinned where it has more samples than can be seen: of each slice the lowest and the highest. */
    private Layer.Curve curve(double from, double to) {
        List<Integer> shown = shown(from, to);
        double[] times = new double[shown.size()];
        double[] forces = new double[shown.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = trace.time(shown.get(i)) - trace.begin();
            forces[i] = trace.force(shown.get(i));
        }
        return new Layer.Curve(new Series(times, forces), Look.of(Ink.INK, Stroke.ASKED_FINE), "force");
    }

    private List<Integer> shown(double from, double to) {
        List<Integer> shown = new ArrayList<>();
        double slice = (to - from) / SLICES;
        int i = 0;
        while (i < trace.size()) {
            if (trace.time(i) < from || trace.time(i) > to) {
                i++;
                continue;
            }
            double end = from + slice * (Math.floor((trace.time(i) - from) / slice) + 1);
            int low = i;
            int high = i;
            int next = i;
            while (next < trace.size() && trace.time(next) < end && trace.time(next) <= to || next == i) {
                low = trace.force(next) < trace.force(low) ? next : low;
                high = trace.force(next) > trace.force(high) ? next : high;
                next++;
            }
            shown.add(Math.min(low, high));
            if (low != high) {
                shown.add(Math.max(low, high));
            }
            i = next;
        }
        return shown;
    }
}
