package counterpull.bench.tubing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where a fit of Ogden's terms begins: every choice of exponents from a coarse grid, the sizes by plain least squares (the force is
 * straight in them), all positive; the best of each pattern of signs, since a rising and a falling exponent can serve the same readings. No chance in
 * it, so the same readings give the same law.
 */
final class OgdenStarts {
    private static final double[] GRID = {-5, -3, -1.5, -0.5, 0.7, 1.5, 2.5, 4, 6, 8.5, 11};

    private final Sample sample;
    private final double[][] columns = new double[GRID.length][];
    private final List<Start> found = new ArrayList<>();

    private record Start(double squares, double[] at) {}

    private OgdenStarts(Sample sample, double reference) {
        this.sample = sample;
        for (int k = 0; k < GRID.length; k++) {
            columns[k] = new double[sample.size()];
            for (int i = 0; i < sample.size(); i++) {
                columns[k][i] = OgdenTermShape.force(GRID[k], sample.lengths[i] / sample.natural)
                        / OgdenTermShape.force(GRID[k], reference)
                        / sample.spreads[i];
            }
        }
    }

    static List<double[]> of(Sample sample, int terms, double reference) {
        OgdenStarts starts = new OgdenStarts(sample, reference);
        starts.choose(new int[terms], 0, 0);
        starts.found.sort(Comparator.comparingDouble(Start::squares));
        int[] left = new int[terms + 1];
        Arrays.fill(left, terms > 2 ? 1 : 2);
        List<double[]> best = new ArrayList<>();
        for (Start start : starts.found) {
            if (left[falling(start.at())]-- > 0) {
                best.add(start.at());
            }
        }
        return best;
    }

    private static int falling(double[] at) {
        int count = 0;
        for (int i = 1; i < at.length; i += 2) {
            count += at[i] < 0 ? 1 : 0;
        }
        return count;
    }

    private void choose(int[] picked, int count, int from) {
        if (count == picked.length) {
            solve(picked);
            return;
        }
        for (int k = from; k < GRID.length; k++) {
            picked[count] = k;
            choose(picked, count + 1, k + 1);
        }
    }

    private void solve(int[] picked) {
        int n = picked.length;
        double[][] square = new double[n][n];
        double[] right = new double[n];
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < sample.size(); i++) {
                double force = sample.forces[i] / sample.spreads[i];
                right[j] += columns[picked[j]][i] * force;
                for (int k = 0; k <= j; k++) {
                    square[j][k] += columns[picked[j]][i] * columns[picked[k]][i];
                    square[k][j] = square[j][k];
                }
            }
        }
        keep(picked, Small.solved(square, right));
    }

    private void keep(int[] picked, double[] sizes) {
        double[] at = new double[2 * picked.length];
        for (int j = 0; j < picked.length; j++) {
            if (!(sizes[j] > 0)) {
                return;
            }
            at[2 * j] = sizes[j];
            at[2 * j + 1] = GRID[picked[j]];
        }
        double squares = 0;
        for (int i = 0; i < sample.size(); i++) {
            double left = sample.forces[i] / sample.spreads[i];
            for (int j = 0; j < picked.length; j++) {
                left -= sizes[j] * columns[picked[j]][i];
            }
            squares += left * left;
        }
        found.add(new Start(squares, at));
    }
}
