package counterpull.engine.crosscheck;

import java.util.function.DoubleUnaryOperator;

/**
 * Derivatives by central differences of eighth order with a stated step h: what is cut off is of order h⁸, and rounding adds
 * about 1e-16/h and 1e-16/h² of the function's size.
 */
public final class Stencil {
    private static final double[] FIRST = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
    private static final double[] SECOND = {8.0 / 5, -1.0 / 5, 8.0 / 315, -1.0 / 560};
    private static final double MIDDLE = -205.0 / 72;

    /** How many steps a stencil reaches to either side. */
    static final int REACH = 4;

    private Stencil() {}

    public static double first(DoubleUnaryOperator f, double at, double step) {
        double sum = 0;
        for (int k = 1; k <= REACH; k++) {
            sum += FIRST[k - 1] * (f.applyAsDouble(at + k * step) - f.applyAsDouble(at - k * step));
        }
        return sum / step;
    }

    public static double second(DoubleUnaryOperator f, double at, double step) {
        double sum = MIDDLE * f.applyAsDouble(at);
        for (int k = 1; k <= REACH; k++) {
            sum += SECOND[k - 1] * (f.applyAsDouble(at + k * step) + f.applyAsDouble(at - k * step));
        }
        return sum / (step * step);
    }
}
