package counterpull.engine.strength;

import java.util.List;

/**
 * The log ratio to a curve after readings of it, each with its own normal noise: the textbook Gaussian process, mean
 * kᵀ (K + N)⁻¹ y and variance k(x,x) − kᵀ (K + N)⁻¹ k (Rasmussen and Williams 2006, equations 2.25 and 2.26; from
 * memory). Without readings, 0 and the spread itself.
 */
final class Posterior {
    private final Spread spread;
    private final double[] at;
    private final double[] shapeSd;
    private final Cholesky cholesky;
    private final double[] weights;

    Posterior(Spread spread, List<LogReading> readings) {
        this.spread = spread;
        at = new double[readings.size()];
        shapeSd = new double[at.length];
        double[] values = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = readings.get(i).angle();
            shapeSd[i] = spread.shapeSd(at[i]);
            values[i] = readings.get(i).value();
        }
        cholesky = new Cholesky(covarianceOf(readings));
        weights = cholesky.solve(values);
    }

    private double[][] covarianceOf(List<LogReading> readings) {
        double[][] matrix = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
            matrix[i] = toReadings(at[i]);
            matrix[i][i] += readings.get(i).noise();
        }
        return matrix;
    }

    /** Mean log ratio at an angle (rad). */
    double mean(double angle) {
        return mean(angle, spread.shapeSd(angle));
    }

    /** The same with the standard deviation of the smooth part already at hand. */
    double mean(double angle, double here) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weights[i] * spread.covariance(angle - at[i], here, shapeSd[i]);
        }
        return sum;
    }

    /** Covariance of the log ratio at two angles (rad). */
    double covariance(double angle, double other) {
        double[] here = cholesky.forward(toReadings(angle));
        double[] there = cholesky.forward(toReadings(other));
        double covariance = spread.covariance(angle, other);
        for (int i = 0; i < at.length; i++) {
            covariance -= here[i] * there[i];
        }
        return covariance;
    }

    private double[] toReadings(double angle) {
        double here = spread.shapeSd(angle);
        double[] row = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            row[i] = spread.covariance(angle - at[i], here, shapeSd[i]);
        }
        return row;
    }
}
