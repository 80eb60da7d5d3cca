package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.Student;
import java.util.function.ToDoubleFunction;

/**
 * Another set of readings as a share of the fitted curve: share = a + b ξ, straight along the length, by least squares. The curve's own
 * uncertainty and the readings' are added.
 */
final class Against {
    private final CurveFit curve;
    private final Sample readings;
    private final boolean tilted;
    private final double middle;
    private final double half;

    Against(CurveFit curve, Sample readings) {
        this.curve = curve;
        this.readings = readings;
        middle = (readings.last() + readings.lengths[0]) / 2;
        half = Math.max((readings.last() - readings.lengths[0]) / 2, 1e-9);
        tilted = distinct() > 2;
    }

    private int distinct() {
        int count = 1;
        for (int i = 1; i < readings.size(); i++) {
            count += readings.lengths[i] > readings.lengths[i - 1] + 1e-9 ? 1 : 0;
        }
        return count;
    }

    /** Share at each place, weighed by the curve's own force there. */
    Estimate meanShare(double from, double to) {
        int steps = 16;
        double[] lengths = new double[readings.size() + steps + 1];
        System.arraycopy(readings.lengths, 0, lengths, 0, readings.size());
        for (int i = 0; i <= steps; i++) {
            lengths[readings.size() + i] = from + (to - from) * i / steps;
        }
        ToDoubleFunction<double[]> share = forces -> {
            double[] fitted = fitted(forces);
            double above = 0;
            double below = 0;
            for (int i = 0; i <= steps; i++) {
                double weight = (i == 0 || i == steps ? 0.5 : 1) * forces[readings.size() + i];
                above += weight * (fitted[0] + fitted[1] * along(lengths[readings.size() + i]));
                below += weight;
            }
            return above / below;
        };
        Estimate own = curve.of(lengths, share);
        return both(own, own.value(), lengths, steps);
    }

    private Estimate both(Estimate own, double value, double[] lengths, int steps) {
        double[] forces = new double[lengths.length];
        double below = 0;
        double slope = 0;
        for (int i = 0; i < forces.length; i++) {
            forces[i] = curve.force(lengths[i]).value();
        }
        for (int i = 0; i <= steps; i++) {
            double weight = (i == 0 || i == steps ? 0.5 : 1) * forces[readings.size() + i];
            below += weight;
            slope += weight * along(lengths[readings.size() + i]);
        }
        double noise = noise(forces);
        double fromReadings = noise * noise * variance(forces, slope / below);
        double quantile = Student.twoSided95(freedom());
        // the curve's own error with the noise that both sets together show
        double pooled = curve.noise() > 0 ? own.standardError() * noise / curve.noise() : 0;
        double error = Math.sqrt(pooled * pooled + fromReadings);
        double width = quantile * error;
        return new Estimate(value, error, value - width, value + width, Estimate.Standing.FREE);
    }

    /** Whether the share changes along the length by more than chance and by more than one part in a hundred. */
    boolean tiltMatters() {
        if (!tilted) {
            return false;
        }
        double[] forces = new double[readings.size()];
        for (int i = 0; i < forces.length; i++) {
            forces[i] = curve.force(readings.lengths[i]).value();
        }
        double[] sums = sums(forces);
        double error = noise(forces) * Math.sqrt(sums[0] / (sums[0] * sums[2] - sums[1] * sums[1]));
        double tilt = Math.abs(fitted(forces)[1]);
        return tilt > 0.01 && tilt > Student.twoSided95(freedom()) * error;
    }

    /** A length brought inside those that were read. */
    double inside(double length) {
        return Math.max(readings.lengths[0], Math.min(readings.last(), length));
    }

    double share(double length, double[] fitted) {
        return fitted[0] + fitted[1] * along(length);
    }

    /** a and b, with the curve's most likely forces. */
    double[] shares() {
        double[] forces = new double[readings.size()];
        for (int i = 0; i < forces.length; i++) {
            forces[i] = curve.force(readings.lengths[i]).value();
        }
        return fitted(forces);
    }

    private double along(double length) {
        return tilted ? (length - middle) / half : 0;
    }

    private double[] fitted(double[] forces) {
        double[] sums = sums(forces);
        double up = 0;
        double tilt = 0;
        for (int i = 0; i < readings.size(); i++) {
            double weight = forces[i] / (readings.spreads[i] * readings.spreads[i]);
            up += weight * readings.forces[i];
            tilt += weight * along(readings.lengths[i]) * readings.forces[i];
        }
        if (!tilted) {
            return new double[] {up / sums[0], 0};
        }
        double area = sums[0] * sums[2] - sums[1] * sums[1];
        return new double[] {(up * sums[2] - tilt * sums[1]) / area, (tilt * sums[0] - up * sums[1]) / area};
    }

    private double[] sums(double[] forces) {
        double[] sums = new double[3];
        for (int i = 0; i < readings.size(); i++) {
            double x = along(readings.lengths[i]);
            double weight = Math.pow(forces[i] / readings.spreads[i], 2);
            sums[0] += weight;
            sums[1] += weight * x;
            sums[2] += weight * x * x;
        }
        return sums;
    }

    private double variance(double[] forces, double at) {
        double[] sums = sums(forces);
        return tilted
                ? (sums[2] - 2 * at * sums[1] + at * at * sums[0]) / (sums[0] * sums[2] - sums[1] * sums[1])
                : 1 / sums[0];
    }

    private double freedom() {
        int used = tilted ? 2 : 1;
        return readings.stated()
                ? Double.POSITIVE_INFINITY
                : Math.max(0.5, curve.degreesOfFreedom() + readings.size() - used);
    }

    /** Stated, or pooled from both sets. */
    private double noise(double[] forces) {
        if (readings.stated()) {
            return curve.noise();
        }
        double[] fitted = fitted(forces);
        double squares = curve.noise() * curve.noise() * curve.degreesOfFreedom();
        for (int i = 0; i < readings.size(); i++) {
            double left = readings.forces[i] - share(readings.lengths[i], fitted) * forces[i];
            squares += Math.pow(left / readings.spreads[i], 2);
        }
        return Math.sqrt(squares / freedom());
    }
}
