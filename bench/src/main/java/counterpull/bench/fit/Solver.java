package counterpull.bench.fit;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Solves a {@link Regression}: free, and again with what lies past a limit held there. */
final class Solver {
    private static final int ROUNDS = 1000;

    /** The library's own first step and rank test; settled a thousand times nearer than its 1e-10. */
    private static final double FIRST_STEP = 100;

    private static final double SETTLED = 1e-13;
    private static final double RANK = 2.2250738585072014e-308;
    private static final double SAME_NOISE = 1e-10;

    /** Cube root of the rounding of a double: the best step of a central difference. */
    private static final double STEP = 6e-6;

    /** A direction that moves the readings 1e-10 less than the others is not seen by them. */
    private static final double SINGULAR = 1e-10;

    private final Regression of;
    private final int readings;
    private final int parameters;
    private final boolean[] held;
    private double[] nearest;
    private double least;

    Solver(Regression of) {
        this.of = of;
        readings = of.readings();
        parameters = of.parameters();
        held = new boolean[parameters];
    }

    Fit fit() {
        Solution free = solved(of.start());
        Solution inside = free;
        for (int i = past(inside); i >= 0; i = past(inside)) {
            held[i] = true;
            double[] start = inside.at.clone();
            start[i] = of.lowest(i);
            inside = solved(start);
        }
        return new Fit(of, free, inside, held.clone());
    }

    private int past(Solution solution) {
        int worst = -1;
        double most = 0;
        for (int i = 0; i < parameters; i++) {
            double past = (of.lowest(i) - solution.at[i]) / Math.max(1e-300, solution.standardError(i));
            if (!held[i] && past > most) {
                worst = i;
                most = past;
            }
        }
        return worst;
    }

    private Solution solved(double[] start) {
        if (of.noise() instanceof Noise.Stated stated) {
            return solution(optimum(start, stated.sd()), stated.sd(), Double.POSITIVE_INFINITY);
        }
        boolean outside = outside();
        double sd = 1;
        double[] at = start;
        Solution found = null;
        for (int round = 0; round < ROUNDS; round++) {
            at = optimum(at, sd);
            found = scattered(at, sd);
            boolean settled = !outside || Math.abs(found.noise - sd) <= SAME_NOISE * sd || found.noise == 0;
            sd = found.noise;
            if (settled) {
                break;
            }
        }
        return found;
    }

    private boolean outside() {
        for (int i = 0; i < parameters; i++) {
            if (!held[i] && of.knownSd(i) < Double.POSITIVE_INFINITY) {
                return true;
            }
        }
        return false;
    }

    /** The noise as the scatter shows it; what is known beforehand uses up fewer degrees of freedom. */
    private Solution scattered(double[] at, double assumed) {
        RealMatrix covariance = covariance(at, assumed);
        double used = 0;
        for (int i = 0; i < parameters; i++) {
            used += held[i] ? 0 : 1 - covariance.getEntry(i, i) / (of.knownSd(i) * of.knownSd(i));
        }
        double left = readings - used;
        if (left < 1e-6) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "readings",
                    readings,
                    Math.ceil(used + 1),
                    "",
                    "there are too few readings to see their own scatter: take more, or state the scale's accuracy");
        }
        double noise = Math.sqrt(sumOfSquares(at) / left);
        return solution(at, noise, left);
    }

    private Solution solution(double[] at, double noise, double degreesOfFreedom) {
        return new Solution(at, covariance(at, noise), noise, degreesOfFreedom, sumOfSquares(at));
    }

    private double sumOfSquares(double[] at) {
        double sum = 0;
        for (int i = 0; i < readings; i++) {
            double residual = of.residual(at, i);
            sum += residual * residual;
        }
        return sum;
    }

    private double[] optimum(double[] start, double noise) {
        double sd = noise > 0 ? noise : 1e-300;
        least = Double.POSITIVE_INFINITY;
        try {
            return new LevenbergMarquardtOptimizer(FIRST_STEP, SETTLED, SETTLED, SETTLED, RANK)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(new double[readings + parameters])
                            .model(point -> linearised(point.toArray(), sd))
                            .lazyEvaluation(false)
                            .maxEvaluations(of.steps())
                            .maxIterations(of.steps())
                            .build())
                    .getPoint()
                    .toArray();
        } catch (MathRuntimeException failed) {
            if (cannotBeBettered(failed) || of.steps() < Regression.ENOUGH) {
                return nearest;
            }
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "steps of the fit",
                    of.steps(),
                    of.steps(),
                    "",
                    "no curve of this kind settles on these readings");
        }
    }

    /** Steps that change nothing any more are an answer, not a failure: exact readings end so. */
    private static boolean cannotBeBettered(MathRuntimeException failed) {
        return failed.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_COST_RELATIVE_TOLERANCE
                || failed.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_PARAMETERS_RELATIVE_TOLERANCE
                || failed.getSpecifier() == LocalizedOptimFormats.TOO_SMALL_ORTHOGONALITY_TOLERANCE;
    }

    private Pair<RealVector, RealMatrix> linearised(double[] at, double noise) {
        double[] rows = rows(at, noise);
        double cost = 0;
        for (double row : rows) {
            cost += row * row;
        }
        if (cost < least) {
            least = cost;
            nearest = at.clone();
        }
        return new Pair<>(new ArrayRealVector(rows, false), new Array2DRowRealMatrix(slopes(at, noise), false));
    }

    private double[] rows(double[] at, double noise) {
        double[] rows = new double[readings + parameters];
        for (int i = 0; i < readings; i++) {
            rows[i] = -of.residual(at, i) / noise;
        }
        for (int k = 0; k < parameters; k++) {
            rows[readings + k] = pull(at, k);
        }
        return rows;
    }

    // a held parameter keeps to its limit because nothing depends on it any more but this row
    private double pull(double[] at, int k) {
        return held[k] ? at[k] - of.lowest(k) : (at[k] - of.known(k)) / of.knownSd(k);
    }

    private double[][] slopes(double[] at, double noise) {
        double[][] slopes = new double[readings + parameters][parameters];
        if (!known(slopes, at, noise)) {
            differences(slopes, at, noise);
        }
        for (int k = 0; k < parameters; k++) {
            slopes[readings + k][k] = held[k] ? 1 : 1 / of.knownSd(k);
        }
        return slopes;
    }

    private boolean known(double[][] slopes, double[] at, double noise) {
        for (int i = 0; i < readings; i++) {
            if (!of.slopes(at, i, slopes[i])) {
                return false;
            }
            for (int k = 0; k < parameters; k++) {
                slopes[i][k] = held[k] ? 0 : slopes[i][k] / noise;
            }
        }
        return true;
    }

    private void differences(double[][] slopes, double[] at, double noise) {
        double[] moved = at.clone();
        for (int k = 0; k < parameters; k++) {
            if (held[k]) {
                continue;
            }
            double step = STEP * Math.max(Math.abs(at[k]), STEP);
            for (int i = 0; i < readings; i++) {
                moved[k] = at[k] + step;
                double above = of.residual(moved, i);
                moved[k] = at[k] - step;
                slopes[i][k] = (of.residual(moved, i) - above) / (2 * step * noise);
            }
            moved[k] = at[k];
        }
    }

    /** (JᵀJ)⁻¹ by the triangle of J with its columns scaled; rows of held parameters are 0. */
    private RealMatrix covariance(double[] at, double noise) {
        double[][] jacobian = slopes(at, noise > 0 ? noise : 1);
        double[] size = sizes(jacobian);
        RealMatrix scaled = new Array2DRowRealMatrix(jacobian, false);
        QRDecomposition qr = new QRDecomposition(scaled, 0);
        double[] ones = new double[parameters];
        Arrays.fill(ones, 1);
        RealMatrix triangle = qr.getR().getSubMatrix(0, parameters - 1, 0, parameters - 1);
        for (int k = 0; k < parameters; k++) {
            if (!(Math.abs(triangle.getEntry(k, k)) > SINGULAR)) {
                throw unseen();
            }
        }
        RealMatrix inverse = inverseOfTriangle(triangle);
        RealMatrix covariance = inverse.multiplyTransposed(inverse);
        for (int i = 0; i < parameters; i++) {
            for (int k = 0; k < parameters; k++) {
                boolean fixed = held[i] || held[k] || noise == 0;
                covariance.setEntry(i, k, fixed ? 0 : covariance.getEntry(i, k) / (size[i] * size[k]));
            }
        }
        return covariance;
    }

    private double[] sizes(double[][] jacobian) {
        double[] size = new double[parameters];
        for (int k = 0; k < parameters; k++) {
            for (double[] row : jacobian) {
                size[k] = Math.hypot(size[k], row[k]);
            }
            if (!(size[k] > 0) || !(size[k] <= Double.MAX_VALUE)) {
                throw unseen();
            }
            for (double[] row : jacobian) {
                row[k] /= size[k];
            }
        }
        return size;
    }

    private RealMatrix inverseOfTriangle(RealMatrix triangle) {
        RealMatrix inverse = new Array2DRowRealMatrix(parameters, parameters);
        for (int column = 0; column < parameters; column++) {
            for (int row = column; row >= 0; row--) {
                double sum = row == column ? 1 : 0;
                for (int k = row + 1; k <= column; k++) {
                    sum -= triangle.getEntry(row, k) * inverse.getEntry(k, column);
                }
                inverse.setEntry(row, column, sum / triangle.getEntry(row, row));
            }
        }
        return inverse;
    }

    private static Refusal unseen() {
        return new Refusal(
                Fault.OUTSIDE_LIMITS,
                "different readings",
                0,
                1,
                "",
                "these readings cannot tell the numbers of the curve apart: take readings that differ more");
    }
}
