package counterpull.engine.crosscheck;

/** Gaussian elimination with row exchange. */
final class PlainSolve {
    private PlainSolve() {}

    static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        for (int column = 0; column < n; column++) {
            exchange(matrix, right, column);
            for (int row = column + 1; row < n; row++) {
                double factor = matrix[row][column] / matrix[column][column];
                right[row] -= factor * right[column];
                for (int k = column; k < n; k++) {
                    matrix[row][k] -= factor * matrix[column][k];
                }
            }
        }
        return back(matrix, right);
    }

    private static void exchange(double[][] matrix, double[] right, int column) {
        int best = column;
        for (int row = column + 1; row < right.length; row++) {
            if (Math.abs(matrix[row][column]) > Math.abs(matrix[best][column])) {
                best = row;
            }
        }
        double[] line = matrix[column];
        matrix[column] = matrix[best];
        matrix[best] = line;
        double value = right[column];
        right[column] = right[best];
        right[best] = value;
    }

    private static double[] back(double[][] matrix, double[] right) {
        double[] solution = right.clone();
        for (int row = right.length - 1; row >= 0; row--) {
            for (int k = row + 1; k < right.length; k++) {
                solution[row] -= matrix[row][k] * solution[k];
            }
            solution[row] /= matrix[row][row];
        }
        return solution;
    }
}
