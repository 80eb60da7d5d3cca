package counterpull.bench.trace;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Traces whose answers are known. */
final class Traces {
    private Traces() {}

    /** A function sampled evenly. */
    static Trace even(DoubleUnaryOperator force, double seconds, double perSecond) {
        int n = (int) Math.round(seconds * perSecond) + 1;
        double[] times = new double[n];
        double[] forces = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = i / perSecond;
            forces[i] = force.applyAsDouble(times[i]);
        }
        return Trace.of(times, forces);
    }

    /** Straight pieces through corner points time, force, time, force, … */
    static DoubleUnaryOperator corners(double... points) {
        return t -> {
            int i = 0;
            while (i + 2 < points.length && points[i + 2] < t) {
                i += 2;
            }
            if (t <= points[0] || i + 2 >= points.length) {
                return t <= points[0] ? points[1] : points[points.length - 1];
            }
            double share = (t - points[i]) / (points[i + 2] - points[i]);
            return points[i + 1] + share * (points[i + 3] - points[i + 1]);
        };
    }

    /** Rest at 20 N for a second, half a second up to 400 N, three seconds there, half a second down, a second of rest. */
    static DoubleUnaryOperator trapezoid() {
        return corners(0, 20, 1, 20, 1.5, 400, 4.5, 400, 5, 20, 6, 20);
    }

    /** The same trace with noise whose neighbours are correlated by rho. */
    static Trace noisy(Trace trace, double sd, double rho, Random random) {
        double[] times = new double[trace.size()];
        double[] forces = new double[trace.size()];
        double noise = sd * random.nextGaussian();
        for (int i = 0; i < times.length; i++) {
            times[i] = trace.time(i);
            forces[i] = trace.force(i) + noise;
            noise = rho * noise + sd * Math.sqrt(1 - rho * rho) * random.nextGaussian();
        }
        return Trace.of(times, forces);
    }
}
