package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * The line of a weight stack, after its pulleys: what one kilogram of the stack pulls at the line's end.
 *
 * @param ratio R, how far the line runs for each metre the stack rises, above zero: 2 halves the force and quarters the inertia
 * @param friction lost share of the pull, 0 to 0.9: the line pulls (1 + friction) of the stack's share while the stack rises,
 *     (1 − friction) while it sinks, all of it when held
 * @param stack the stack
 * @param moving mass that moves with the line itself and is not weighed (handle, pulleys), kg, zero or more
 */
public record StackLine(double ratio, double friction, Loaded stack, double moving) {
    private static final Require.Limits FRICTION = new Require.Limits(0, 0.9);
    private static final Require.Limits MASS = new Require.Limits(0, 200);

    public StackLine {
        Require.positive(ratio, "pulley ratio", "");
        Require.within(ratio, new Require.Limits(0, 20), "pulley ratio", "");
        Require.within(friction, FRICTION, "friction of the line (share of the pull)", "");
        Require.within(moving, MASS, "mass that moves with the line", "kg");
    }

    /** k: what friction makes of the stack's pull while the stack rises (rise above 0), sinks (below 0) or rests. */
    public double factor(double rise) {
        return 1 + Math.signum(rise) * friction;
    }
}
