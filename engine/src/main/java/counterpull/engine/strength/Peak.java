package counterpull.engine.strength;

import java.util.function.DoubleUnaryOperator;

/** The largest value of a smooth curve on a range: a scan in steps of about half a degree, then a golden section. */
final class Peak {
    private static final int STEPS = 256;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Peak() {}

    static double of(DoubleUnaryOperator curve, AngleRange range) {
        double step = (range.high() - range.low()) / STEPS;
        int best = 0;
        double largest = curve.applyAsDouble(range.low());
        for (int i = 1; i <= STEPS; i++) {
            double value = curve.applyAsDouble(range.low() + i * step);
            if (value > largest) {
                largest = value;
                best = i;
            }
        }
        double low = range.low() + Math.max(0, best - 1) * step;
        double high = range.low() + Math.min(STEPS, best + 1) * step;
        return Math.max(largest, refined(curve, low, high));
    }

    private static double refined(DoubleUnaryOperator curve, double low, double high) {
        double a = low;
        double b = high;
        for (int i = 0; i < 40; i++) {
            double left = b - GOLDEN * (b - a);
            double right = a + GOLDEN * (b - a);
            if (curve.applyAsDouble(left) > curve.applyAsDouble(right)) {
                b = right;
            } else {
                a = left;
            }
        }
        return curve.applyAsDouble((a + b) / 2);
    }
}
