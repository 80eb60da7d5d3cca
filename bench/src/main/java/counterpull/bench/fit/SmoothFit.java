package counterpull.bench.fit;

import java.util.List;

/** The curves for one setting of the Gaussian processes: generalised least squares for the polynomials, and what remains. */
final class SmoothFit {
    private final SmoothSetting setting;
    private final double[][] triangle;
    private final double[][] fixedTriangle;
    private final double[][] halfFixed;
    private final double[] coefficients;
    private final double[] halfResidual;
    private final double variance;
    private final double likelihood;

    private SmoothFit(SmoothSetting setting, SmoothCurves.Repeats repeats, Noise noise) {
        this.setting = setting;
        List<SmoothCurves.Sight> sights = setting.scale().sights();
        int n = sights.size();
        int p = setting.scale().fixed();
        triangle = Triangle.of(covariance(sights));
        double[] y = new double[n];
        double[][] columns = new double[p][n];
        for (int i = 0; i < n; i++) {
            y[i] = sights.get(i).value();
            double[] row = setting.scale().row(look(sights.get(i)));
            for (int k = 0; k < p; k++) {
                columns[k][i] = row[k];
            }
        }
        halfFixed = new double[p][];
        for (int k = 0; k < p; k++) {
            halfFixed[k] = Triangle.solve(triangle, columns[k]);
        }
        double[] half = Triangle.solve(triangle, y);
        double[][] normal = new double[p][p];
        double[] right = new double[p];
        for (int k = 0; k < p; k++) {
            right[k] = dot(halfFixed[k], half);
            for (int j = 0; j < p; j++) {
                normal[k][j] = dot(halfFixed[k], halfFixed[j]);
            }
        }
        fixedTriangle = Triangle.of(normal);
        coefficients = Triangle.solveTransposed(fixedTriangle, Triangle.solve(fixedTriangle, right));
        halfResidual = half.clone();
        for (int k = 0; k < p; k++) {
            for (int i = 0; i < n; i++) {
                halfResidual[i] -= coefficients[k] * halfFixed[k][i];
            }
        }
        double squares = dot(halfResidual, halfResidual) + repeats.sumOfSquares();
        double left = (double) n - p + repeats.degreesOfFreedom();
        double volume = -Triangle.logDeterminant(triangle) - Triangle.logDeterminant(fixedTriangle);
        if (noise instanceof Noise.Stated stated) {
            variance = stated.sd() * stated.sd();
            likelihood = volume - dot(halfResidual, halfResidual) / (2 * variance) + setting.expected(stated.sd());
        } else {
            variance = squares / left;
            likelihood =
                    volume - left / 2 * Math.log(Math.max(squares, 1e-300)) + setting.expected(Math.sqrt(variance));
        }
    }

    static SmoothFit of(SmoothSetting setting, SmoothCurves.Repeats repeats, Noise noise) {
        return new SmoothFit(setting, repeats, noise);
    }

    private static SmoothScale.Look look(SmoothCurves.Sight sight) {
        return new SmoothScale.Look(sight.at(), sight.weights(), 0);
    }

    private double[][] covariance(List<SmoothCurves.Sight> sights) {
        int n = sights.size();
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] weights = sights.get(i).weights();
            for (int k = 0; k <= i; k++) {
                covariance[i][k] = setting.shared(weights, sights.get(k).weights())
                        * setting.kernel().between(i, k);
            }
            covariance[i][i] += 1.0 / sights.get(i).times();
        }
        return covariance;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Logarithm of how likely this setting makes the readings, up to a constant. */
    double likelihood() {
        return likelihood;
    }

    /** σ², as stated or as the readings scatter about these curves. */
    double variance() {
        return variance;
    }

    SmoothKernel kernel() {
        return setting.kernel();
    }

    /** What a look shows, and its variance; the kernel from the look to every reading is this setting's. */
    double[] look(SmoothScale.Look look, double[] row, double[] from) {
        List<SmoothCurves.Sight> sights = setting.scale().sights();
        double[] shared = new double[sights.size()];
        for (int i = 0; i < shared.length; i++) {
            shared[i] = setting.shared(look.weights(), sights.get(i).weights()) * from[i];
        }
        double[] half = Triangle.solve(triangle, shared);
        double value = dot(row, coefficients) + dot(half, halfResidual);
        double[] left = row.clone();
        for (int k = 0; k < left.length; k++) {
            left[k] -= dot(halfFixed[k], half);
        }
        double[] unsure = Triangle.solve(fixedTriangle, left);
        double prior = setting.shared(look.weights(), look.weights())
                * setting.kernel().at(look);
        return new double[] {value, variance * Math.max(0, prior - dot(half, half) + dot(unsure, unsure))};
    }
}
