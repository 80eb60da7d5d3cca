package counterpull.bench.tubing;

/** Linear equations of a few unknowns, symmetric and not negative; what they do not fix stays 0. */
final class Small {
    private static final double NOTHING = 1e-13;

    private Small() {}

    /** Gauss elimination with the largest diagonal first. */
    static double[] solved(double[][] matrix, double[] right) {
        int n = right.length;
        double[][] a = new double[n][];
        double[] b = right.clone();
        int[] pivot = new int[n];
        boolean[] done = new boolean[n];
        double first = 0;
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
            first = Math.max(first, Math.abs(a[i][i]));
        }
        int rank = 0;
        for (; rank < n; rank++) {
            int best = -1;
            for (int i = 0; i < n; i++) {
                boolean larger = !done[i] && (best < 0 || Math.abs(a[i][i]) > Math.abs(a[best][best]));
                best = larger ? i : best;
            }
            if (!(Math.abs(a[best][best]) > NOTHING * first)) {
                break;
            }
            done[best] = true;
            pivot[rank] = best;
            for (int i = 0; i < n; i++) {
                if (i != best) {
                    double factor = a[i][best] / a[best][best];
                    for (int k = 0; k < n; k++) {
                        a[i][k] -= factor * a[best][k];
                    }
                    b[i] -= factor * b[best];
                }
            }
        }
        double[] solution = new double[n];
        for (int i = 0; i < rank; i++) {
            solution[pivot[i]] = b[pivot[i]] / a[pivot[i]][pivot[i]];
        }
        return solution;
    }
}
