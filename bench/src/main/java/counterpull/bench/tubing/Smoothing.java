package counterpull.bench.tubing;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** A smooth curve at one strength of smoothing; variances in units of the square of one reading's noise. */
final class Smoothing {
    private final RealMatrix functions;
    private final RealMatrix inverse;
    private final RealMatrix precision;
    private final RealMatrix coefficientCovariance;
    private final double[] weighted;
    private final double[] coefficients;
    private final double logEvidence;
    final double misfit;

    /** covariance: of the readings over the noise's square; functions: what is not smoothed away, a column each. */
    Smoothing(double[][] covariance, double[][] functions, double[] forces) {
        CholeskyDecomposition whole = triangle(new Array2DRowRealMatrix(covariance, false));
        this.functions = new Array2DRowRealMatrix(functions, false);
        inverse = whole.getSolver().getInverse();
        RealMatrix seen = inverse.multiply(this.functions);
        RealMatrix normal = this.functions.transposeMultiply(seen);
        CholeskyDecomposition few = triangle(normal);
        coefficientCovariance = few.getSolver().getInverse();
        precision = inverse.subtract(seen.multiply(coefficientCovariance).multiplyTransposed(seen));
        coefficients = coefficientCovariance.multiplyTransposed(seen).operate(forces);
        weighted = precision.operate(forces);
        double sum = 0;
        for (int i = 0; i < forces.length; i++) {
            sum += forces[i] * weighted[i];
        }
        misfit = Math.max(sum, 0);
        logEvidence = -(logOf(whole.getL()) + logOf(few.getL()));
    }

    /** Rounding may leave a matrix a little lopsided where readings are repeated at one length: the mean of both halves is taken. */
    private static CholeskyDecomposition triangle(RealMatrix matrix) {
        try {
            return new CholeskyDecomposition(matrix.add(matrix.transpose()).scalarMultiply(0.5), 1e-9, 0);
        } catch (MathRuntimeException notPositive) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "readings",
                    matrix.getRowDimension(),
                    matrix.getRowDimension() + 1.0,
                    "",
                    "these readings cannot tell a smooth curve apart: read at more lengths");
        }
    }

    private static double logOf(RealMatrix triangle) {
        double sum = 0;
        for (int i = 0; i < triangle.getRowDimension(); i++) {
            sum += Math.log(triangle.getEntry(i, i));
        }
        return sum;
    }

    /** Log of how likely the readings are, noise known. */
    double logEvidence(double noise) {
        return logEvidence - misfit / (2 * noise * noise);
    }

    /** The same with the noise judged from the readings, so many of them free. */
    double logEvidenceOfScatter(int free) {
        return logEvidence - free * Math.log(Math.max(misfit, 1e-300)) / 2;
    }

    double value(double[] functionsThere, double[] covarianceWithReadings) {
        double sum = 0;
        for (int k = 0; k < coefficients.length; k++) {
            sum += functionsThere[k] * coefficients[k];
        }
        for (int i = 0; i < weighted.length; i++) {
            sum += covarianceWithReadings[i] * weighted[i];
        }
        return sum;
    }

    /** Covariance of the curve at two places; prior is their covariance beforehand. */
    double covariance(double prior, double[][] one, double[][] other) {
        double[] a = left(one);
        double[] b = left(other);
        double sum = prior;
        double[] solved = inverse.operate(other[1]);
        for (int i = 0; i < solved.length; i++) {
            sum -= one[1][i] * solved[i];
        }
        double[] spread = coefficientCovariance.operate(b);
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * spread[k];
        }
        return sum;
    }

    private double[] left(double[][] place) {
        double[] seen = functions.preMultiply(inverse.operate(place[1]));
        double[] left = place[0].clone();
        for (int k = 0; k < left.length; k++) {
            left[k] -= seen[k];
        }
        return left;
    }

    /** What is left of a reading when the others foretell it. */
    double leftOut(int reading) {
        return weighted[reading] / precision.getEntry(reading, reading);
    }

    /** How many numbers the curve uses up: the trace of what turns readings into fitted ones. */
    double numbers(double[] spreads) {
        double sum = 0;
        for (int i = 0; i < spreads.length; i++) {
            sum += 1 - spreads[i] * spreads[i] * precision.getEntry(i, i);
        }
        return sum;
    }
}
