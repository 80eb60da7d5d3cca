package counterpull.bench.fit;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;

/** Cholesky's lower triangle of a symmetric positive matrix, of which only the lower half is looked at. */
final class Triangle {
    private static final double SINGULAR = 1e-12;

    private Triangle() {}

    static double[][] of(double[][] matrix) {
        int n = matrix.length;
        double[][] triangle = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k <= i; k++) {
                double sum = matrix[i][k];
                for (int j = 0; j < k; j++) {
                    sum -= triangle[i][j] * triangle[k][j];
                }
                if (i == k && !(sum > SINGULAR * matrix[i][i])) {
                    throw new Refusal(
                            Fault.OUTSIDE_LIMITS,
                            "different readings",
                            0,
                            1,
                            "",
                            "these readings cannot tell the numbers of the curve apart: take readings that differ more");
                }
                triangle[i][k] = i == k ? Math.sqrt(sum) : sum / triangle[k][k];
            }
        }
        return triangle;
    }

    /** x with Lx = b. */
    static double[] solve(double[][] triangle, double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= triangle[i][k] * x[k];
            }
            x[i] /= triangle[i][i];
        }
        return x;
    }

    /** x with Lᵀx = b. */
    static double[] solveTransposed(double[][] triangle, double[] b) {
        double[] x = b.clone();
        for (int i = x.length - 1; i >= 0; i--) {
            for (int k = i + 1; k < x.length; k++) {
                x[i] -= triangle[k][i] * x[k];
            }
            x[i] /= triangle[i][i];
        }
        return x;
    }

    /** Half the logarithm of the matrix's determinant. */
    static double logDeterminant(double[][] triangle) {
        double sum = 0;
        for (int i = 0; i < triangle.length; i++) {
            sum += Math.log(triangle[i][i]);
        }
        return sum;
    }
}
