package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Unloading;
import counterpull.engine.elastic.UnloadingCurve;
import java.util.ArrayList;
import java.util.List;

/** What is lost as the engine takes it: one share at every length, or a curve of its own where the share clearly changes. */
final class LossLaw {
    private static final int POINTS = 12;
    private static final double ALMOST_ALL = 1 - 1e-6;
    private static final double NEARLY_ALL_LOST = 0.999;

    private LossLaw() {}

    static Unloading of(Against against, Estimate lost, ElasticLaw law, double natural, double longest) {
        LossFraction same = new LossFraction(Math.min(lost.value(), NEARLY_ALL_LOST));
        if (!against.tiltMatters()) {
            return same;
        }
        double[] shares = against.shares();
        double[] forces = new double[POINTS];
        double[] lengths = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            lengths[i] = natural + (longest - natural) * (i + 1) / POINTS;
            double share = against.share(against.inside(lengths[i]), shares);
            double put = law.tension(Math.min(lengths[i] / natural, longest / natural));
            forces[i] = put * Math.max(0, Math.min(ALMOST_ALL, share));
        }
        Rising.make(forces);
        List<BenchReading> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            points.add(new BenchReading(lengths[i], forces[i]));
        }
        try {
            return new UnloadingCurve(natural, points).fittedTo(law, longest / natural);
        } catch (Refusal aboveTheLaw) {
            return same;
        }
    }
}
