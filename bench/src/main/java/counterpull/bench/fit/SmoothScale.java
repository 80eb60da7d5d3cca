package counterpull.bench.fit;

import java.util.List;

/** Positions mapped to −1 … 1, and what a look at the curves shows of their polynomials. */
final class SmoothScale {
    private final List<SmoothCurves.Sight> sights;
    private final int[] degrees;
    private final double middle;
    private final double half;

    /** A weighted sum of the curves (order 0) or of their slopes (order 1) at a position. */
    record Look(double at, double[] weights, int order) {}

    private SmoothScale(List<SmoothCurves.Sight> sights, int[] degrees, double low, double high) {
        this.sights = sights;
        this.degrees = degrees;
        middle = (low + high) / 2;
        half = high > low ? (high - low) / 2 : 1;
    }

    static SmoothScale of(List<SmoothCurves.Sight> sights, int[] degrees) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SmoothCurves.Sight sight : sights) {
            low = Math.min(low, sight.at());
            high = Math.max(high, sight.at());
        }
        return new SmoothScale(List.copyOf(sights), degrees.clone(), low, high);
    }

    List<SmoothCurves.Sight> sights() {
        return sights;
    }

    double half() {
        return half;
    }

    double place(double at) {
        return (at - middle) / half;
    }

    /** How many polynomial coefficients there are. */
    int fixed() {
        int count = 0;
        for (int degree : degrees) {
            count += degree + 1;
        }
        return count;
    }

    double[] row(Look look) {
        double[] row = new double[fixed()];
        double z = place(look.at());
        int at = 0;
        for (int curve = 0; curve < degrees.length; curve++) {
            for (int power = 0; power <= degrees[curve]; power++) {
                double term = look.order() == 0 ? Math.pow(z, power) : power * Math.pow(z, Math.max(0, power - 1));
                row[at++] = look.weights()[curve] * term;
            }
        }
        return row;
    }
}
