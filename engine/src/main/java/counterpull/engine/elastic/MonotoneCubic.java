package counterpull.engine.elastic;

import java.util.Arrays;

/**
 * A piecewise cubic through points, with a continuous slope, that between two points rises where they rise, falls where they fall
 * and never leaves the interval between them. Knots and values in any unit; the integral in their product.
 *
 * <p>Source: Fritsch FN &amp; Carlson RE 1980, SIAM J Numer Anal 17:238–246: slopes from the mean of the two neighbouring
 * secants (the secant itself at an end), zero beside a flat piece and where the points turn from rising to falling, then pulled
 * back into the circle α² + β² ≤ 9. Knots must rise strictly: callers check. Outside the knots the answer is NaN.
 */
public final class MonotoneCubic {
    /** A stretch is a quotient: one that lies past the last knot by rounding alone still belongs to it. */
    private static final double ROUNDING = 1e-12;

    private final double[] knots;
    private final double[] values;
    private final double[] slopes;
    private final double[] integrals;

    /**
     * Through two or more points.
     *
     * @param knots where they are, rising strictly
     * @param values what is there, one for each knot
     */
    public MonotoneCubic(double[] knots, double[] values) {
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
            boolean turns = secants[i - 1] * secants[i] < 0;
            slopes[i] = turns ? 0 : (secants[i - 1] + secants[i]) / 2;
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

    /** The last knot. */
    public double last() {
        return knots[knots.length - 1];
    }

    /** The value at x; NaN outside the knots. */
    public double value(double x) {
        int i = piece(x);
        if (i < 0) {
            return Double.NaN;
        }
        double h = knots[i + 1] - knots[i];
        double t = fraction(i, x);
        double rise = values[i + 1] - values[i];
        return values[i] + t * (h * slopes[i] + t * (quadratic(i, rise, h) + t * cubic(i, rise, h)));
    }

    /** The slope at x; NaN outside the knots. */
    public double slope(double x) {
        int i = piece(x);
        if (i < 0) {
            return Double.NaN;
        }
        double h = knots[i + 1] - knots[i];
        double t = fraction(i, x);
        double rise = values[i + 1] - values[i];
        return slopes[i] + t * (2 * quadratic(i, rise, h) + 3 * t * cubic(i, rise, h)) / h;
    }

    /** The integral from the first knot to x, the sum of the cubics' own; NaN outside the knots. */
    public double integral(double x) {
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
        if (!(x >= knots[0]) || x > last() + ROUNDING * Math.abs(last())) {
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
