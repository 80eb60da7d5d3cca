package counterpull.engine;

/** Checks of arguments that name the quantity, its value, unit and limit. Every public constructor uses them. */
public final class Require {
    private Require() {}

    /** The value itself if it is a finite number, else a refusal. */
    public static double finite(double value, String quantity, String unit) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new Refusal(
                    Fault.NOT_FINITE, quantity, value, Double.NaN, unit, quantity + " must be a finite number");
        }
        return value;
    }

    /** The value itself if it is finite and above zero, else a refusal. */
    public static double positive(double value, String quantity, String unit) {
        finite(value, quantity, unit);
        if (value <= 0) {
            throw new Refusal(Fault.MUST_BE_POSITIVE, quantity, value, 0, unit, quantity + " must be above zero");
        }
        return value;
    }

    /** The value itself if it is finite and inside [low, high], else a refusal that names the limit it passes. */
    public static double within(double value, Limits limits, String quantity, String unit) {
        finite(value, quantity, unit);
        if (value < limits.low() || value > limits.high()) {
            double limit = value < limits.low() ? limits.low() : limits.high();
            String side = value < limits.low() ? " must be at least " : " must be at most ";
            throw new Refusal(Fault.OUTSIDE_LIMITS, quantity, value, limit, unit, quantity + side + limit + " " + unit);
        }
        return value;
    }

    /**
     * A closed interval; either end may be infinite.
     *
     * @param low the least that is allowed
     * @param high the most that is allowed
     */
    public record Limits(double low, double high) {}
}
