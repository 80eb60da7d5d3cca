package counterpull.engine.strength;

/**
 * Cholesky factor L of a small symmetric positive definite matrix A = L Lᵀ, row by row (textbook algorithm). The
 * caller keeps the diagonal positive by adding each test's own noise to it.
 */
final class Cholesky {
    private final double[][] factor;

    Cholesky(double[][] matrix) {
        int size = matrix.length;
        factor = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= factor[i][k] * factor[j][k];
                }
                factor[i][j] = i == j ? Math.sqrt(rest) : rest / factor[j][j];
            }
        }
    }

    /** L⁻¹ b. */
    double[] forward(double[] b) {
        double[] x = b.clone();
        for (int i = 0; i < x.length; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= factor[i][k] * x[k];
            }
            x[i] /= factor[i][i];
        }
        return x;
    }

    /** A⁻¹ b. */
    double[] solve(double[] b) {
        double[] x = forward(b);
        for (int i = x.length - 1; i >= 0; i--) {
            for (int k = i + 1; k < x.length; k++) {
                x[i] -= factor[k][i] * x[k];
            }
            x[i] /= factor[i][i];
        }
        return x;
    }
}
