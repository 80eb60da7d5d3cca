package counterpull.engine.load;

import counterpull.engine.motion.Course;

/**
 * The integral of something over the coordinate x of a stroke, from the bottom to each position, from its values and slopes there:
 * ∫ f dx ≈ h(f₀ + f₁)/2 + h²(f₀′ − f₁′)/12 between two positions (exact for a cubic; h⁵ f⁗/720 is left out).
 *
 * <p>Source: the corrected trapezoidal rule, Davis and Rabinowitz, Methods of Numerical Integration (from memory).
 */
final class RunningTotal {
    private RunningTotal() {}

    /** The integral up to each position; {@code value} and {@code slope} by position. */
    static double[] of(Course course, double[] value, double[] slope) {
        double[] total = new double[value.length];
        for (int i = 1; i < total.length; i++) {
            double h = course.at(i) - course.at(i - 1);
            double step = h * (value[i - 1] + value[i]) / 2 + h * h * (slope[i - 1] - slope[i]) / 12;
            total[i] = total[i - 1] + step;
        }
        return total;
    }
}
