package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * Friction of a carriage on its rail: f₀ + μ m g cos θ against the motion, N. Its normal force is the weight's alone (a
 * stated simplification). Breakaway friction is recorded apart: no profile asks for it, only what a
 * carriage does when it is let go.
 *
 * @param constant f₀, N, zero or more
 * @param coefficient μ, 0 to 1
 * @param breakaway force that first moves the carriage beyond its weight's share, N, zero or more; 0 where not measured
 */
public record Friction(double constant, double coefficient, double breakaway) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, 1e5);
    private static final Require.Limits FRACTION = new Require.Limits(0, 1);

    public Friction {
        Require.within(constant, NOT_NEGATIVE, "constant friction", "N");
        Require.within(coefficient, FRACTION, "friction coefficient", "");
        Require.within(breakaway, NOT_NEGATIVE, "breakaway friction", "N");
    }

    /** No friction. */
    public static Friction none() {
        return new Friction(0, 0, 0);
    }

    /** The same with other constant friction and coefficient, each brought back to what can be: from 0, the coefficient to 1. */
    public Friction changed(double addedConstant, double addedCoefficient) {
        return new Friction(
                Math.max(0, constant + addedConstant),
                Math.max(0, Math.min(1, coefficient + addedCoefficient)),
                breakaway);
    }
}
