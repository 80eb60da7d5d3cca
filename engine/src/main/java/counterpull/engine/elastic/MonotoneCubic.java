package counterpull.engine.elastic;

import java.util.Arrays;

/**
 * A piecewise cubic through points that never fall, which never falls either and has a continuous slope.
 *
 * <p>Source: Fritsch FN &amp; Carlson RE 1980, SIAM J Numer Anal 17:238–246: slopes from the mean of the two neighbouring
 * secants (the secant itself at an end), zero beside a flat piece, then pulled back into the circle α² + β² ≤ 9. Knots
 * must rise strictly and values must not fall: callers check. Outside the knots the answer is NaN.
 */
final class MonotoneCubic {
    /** A stretch is a quotient: one that lies past the last knot by rounding alone still belongs to it. */
    private static final double ROUNDING = 1e-12;

    private final double[] knots;
    private final double[] values;
    private final double[] slopes;
    private final double[] integrals;

    MonotoneCubic(double[] knots, double[] values) {
        this.knots = knots.clone();
        this.values = values.clone();
        this.slopes = slopes(knots, values);
        this.integrals = new double[knots.length];
        for (int i = 1; i < knots.length; i++) {
            integrals[i] = integrals[i - 1] + pieceIntegral(i - 1, 1);
        }
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] secants = new double[last];
        for (int i = 0; i < last; i++) {
            secants[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slopes = new double[last + 1];
        slopes[0] = secants[0];
        slopes[last] = secants[last - 1];
        for (int i = 1; i < last; i++) {
            slopes[i] = (secants[i - 1] + secants[i]) / 2;
        }
        for (int i = 0; i < last; i++) {
            limit(slopes, i, secants[i]);
        }
        return slopes;
    }

    private static void limit(double[] slopes, int piece, double secant) {
        if (secant == 0) {
            slopes[piece] = 0;
            slopes[piece + 1] = 0;
            return;
        }
        double alpha = slopes[piece] / secant;
        double beta = slopes[piece + 1] / secant;
        double square = alpha * alpha + beta * beta;
        if (square > 9) {
            double scale = 3 / Math.sqrt(square);
            slopes[piece] = scale * alpha * secant;
            slopes[piece + 1] = scale * beta * secant;
        }
    }

    double last() {
        return knots[knots.length - 1];
    }

    double value(double x) {
        int i = piece(x);
        if (i < 0) {
            return Double.NaN;
        }
        double h = knots[i + 1] - knots[i];
        double t = fraction(i, x);
        double rise = values[i + 1] - values[i];
        return values[i] + t * (h * slopes[i] + t * (quadratic(i, rise, h) + t * cubic(i, rise, h)));
    }

    double slope(double x) {
        int i = piece(x);
        if (i < 0) {
            return Double.NaN;
        }
        double h = knots[i + 1] - knots[i];
        double t = fraction(i, x);
        double rise = values[i + 1] - values[i];
        return slopes[i] + t * (2 * quadratic(i, rise, h) + 3 * t * cubic(i, rise, h)) / h;
    }

    /** The integral from the first knot to x: the sum of the cubics' own. */
    double integral(double x) {
        int i = piece(x);
        return i < 0 ? Double.NaN : integrals[i] + pieceIntegral(i, fraction(i, x));
    }

    private double pieceIntegral(int i, double t) {
        double h = knots[i + 1] - knots[i];
        double rise = values[i + 1] - values[i];
        double higher = quadratic(i, rise, h) / 3 + t * cubic(i, rise, h) / 4;
        return h * t * (values[i] + t * (h * slopes[i] / 2 + t * higher));
    }

    private double quadratic(int i, double rise, double h) {
        return 3 * rise - h * (2 * slopes[i] + slopes[i + 1]);
    }

    private double cubic(int i, double rise, double h) {
        return h * (slopes[i] + slopes[i + 1]) - 2 * rise;
    }

    private double fraction(int i, double x) {
        return Math.min(1, (x - knots[i]) / (knots[i + 1] - knots[i]));
    }

    /** The piece that holds x, −1 outside. */
    private int piece(double x) {
        if (!(x >= knots[0]) || x > last() * (1 + ROUNDING)) {
            return -1;
        }
        int low = 0;
        int high = knots.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x >= knots[middle]) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MonotoneCubic that
                && Arrays.equals(knots, that.knots)
                && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(knots) + Arrays.hashCode(values);
    }
}
