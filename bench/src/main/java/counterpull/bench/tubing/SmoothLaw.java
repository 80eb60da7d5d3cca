package counterpull.bench.tubing;

import counterpull.engine.elastic.BenchCurve;
import counterpull.engine.elastic.BenchReading;
import java.util.ArrayList;
import java.util.List;

/** A smooth curve as the engine's curve through points: rising, from no force at natural length, to the longest reading. */
final class SmoothLaw {
    /** Points beside the readings' own lengths, so that no two are farther apart than this share of the range. */
    private static final double WIDEST = 0.1;

    private static final double NEAREST = 0.02;

    private SmoothLaw() {}

    static BenchCurve of(RisingFit fit, Sample sample) {
        double natural = fit.natural().value();
        double[] lengths = lengths(natural, sample);
        double[] forces = new double[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            forces[i] = Math.max(0, fit.mean(lengths[i]));
        }
        Rising.make(forces);
        List<BenchReading> points = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            points.add(new BenchReading(lengths[i], forces[i]));
        }
        return new BenchCurve(natural, points);
    }

    private static double[] lengths(double natural, Sample sample) {
        double range = sample.last() - natural;
        List<Double> all = new ArrayList<>();
        double before = natural;
        for (int i = 0; i < sample.size(); i++) {
            double next = sample.lengths[i];
            boolean last = i == sample.size() - 1;
            if (next - before < NEAREST * range && !last) {
                continue;
            }
            int pieces = (int) Math.ceil((next - before) / (WIDEST * range) - 1e-9);
            for (int k = 1; k < pieces; k++) {
                all.add(before + (next - before) * k / pieces);
            }
            if (!all.isEmpty() && next <= all.get(all.size() - 1)) {
                continue;
            }
            all.add(next);
            before = next;
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
