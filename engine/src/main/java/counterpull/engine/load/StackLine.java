package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * The line of a weight stack, after its pulleys: what the stack pulls at the line's end.
 *
 * <p>Formula: pull = k·m(g + l̈/R)/R + m_moving·l̈, N. l length of line that is drawn out, m, positive where the stack has risen; k = 1 +
 * friction while the stack rises, 1 − friction while it sinks, 1 held. The stack hangs upright whatever the movement's plane is,
 * so it always weighs with standard gravity. A stack that would fall slower than its line comes back (g + l̈/R below 0) is refused:
 * the line would go slack. Source: Newton's second law for the stack, virtual work for the pulleys (R, R²); friction as a fraction
 * of the pull, common practice, no source.
 *
 * @param ratio R, how far the line runs for each metre the stack rises, 0.01 to 20: 2 halves the force and quarters the inertia
 * @param friction lost share of the pull, 0 to 0.9: the line pulls (1 + friction) of the stack's share while the stack rises,
 *     (1 − friction) while it sinks, all of it when held
 * @param stack the stack
 * @param moving mass that moves with the line itself and is not weighed (handle, pulleys), kg, zero or more
 */
public record StackLine(double ratio, double friction, Loaded stack, double moving) {
    private static final Require.Limits RATIO = new Require.Limits(0.01, 20);
    private static final Require.Limits FRICTION = new Require.Limits(0, 0.9);
    private static final Require.Limits MASS = new Require.Limits(0, 200);

    public StackLine {
        Require.positive(ratio, "pulley ratio", "");
        Require.within(ratio, RATIO, "pulley ratio", "");
        Require.within(friction, FRICTION, "friction of the line (share of the pull)", "");
        Require.within(moving, MASS, "mass that moves with the line", "kg");
    }

    /** k: what friction makes of the stack's pull while the stack rises (rise above 0), sinks (below 0) or rests. */
    public double factor(double rise) {
        return 1 + Math.signum(rise) * friction;
    }

    /**
     * What the pull is made of, by phase × position.
     *
     * @param label what the stack is called
     * @param rise a number with the sign of the stack's own motion in the phase, also where the speed is zero; 0 held
     * @param acceleration l̈, m/s², positive where the line at its end speeds up outward; 0 held
     */
    public List<Share> pull(String label, double[] rise, double[] acceleration) {
        double[] weight = new double[rise.length];
        double[] inertia = new double[rise.length];
        double[] rubbing = new double[rise.length];
        double[] along = new double[rise.length];
        for (int cell = 0; cell < rise.length; cell++) {
            weight[cell] = Constants.STANDARD_GRAVITY / ratio;
            inertia[cell] = acceleration[cell] / (ratio * ratio);
            rubbing[cell] = (factor(rise[cell]) - 1) * perKilogram(acceleration[cell]);
            along[cell] = moving * acceleration[cell];
        }
        List<Share> shares = new ArrayList<>(stack.shares(Part.GRAVITY, label, weight));
        shares.addAll(stack.shares(Part.INERTIA, label, inertia));
        if (friction > 0) {
            shares.addAll(stack.shares(Part.FRICTION, "friction of the line, " + label, rubbing));
        }
        if (moving > 0) {
            shares.add(new Share(Part.INERTIA, "what moves with the line", Amount.ONE, along));
        }
        return shares;
    }

    /** (g + l̈/R)/R: what one kilogram of the stack pulls at the line's end without friction, N; refused where it goes slack. */
    public double perKilogram(double acceleration) {
        double upward = acceleration / ratio;
        if (upward < -Constants.STANDARD_GRAVITY) {
            throw new Refusal(
                    Fault.SLACK_STACK,
                    "acceleration of the stack, upward",
                    upward,
                    -Constants.STANDARD_GRAVITY,
                    "m/s²",
                    "the line would go slack: it comes back faster than the stack can fall. Move slower, or turn more gently");
        }
        return (Constants.STANDARD_GRAVITY + upward) / ratio;
    }

    /** Mass that starting and stopping feels at the line's end, m/R² and what moves with the line, kg. */
    public double feltMass(double plates) {
        return stack.mass(plates) / (ratio * ratio) + moving;
    }

    /** What about a stack's line is known only so far, as what resists with another line. */
    List<Knob> knobs(String name, java.util.function.Function<StackLine, Resistance> with) {
        return List.of(
                Knob.mass("stack of the " + name, factor -> with.apply(stackTimes(factor))),
                new Knob("friction of the " + name, Knob.Kind.LINE_FRICTION, added -> with.apply(rubbing(added))));
    }

    /** The same line with so many times the stack's own mass. */
    public StackLine stackTimes(double factor) {
        return new StackLine(ratio, friction, stack.times(factor), moving);
    }

    /** The same line with more friction, never below 0 or above 0.9. */
    public StackLine rubbing(double added) {
        double changed = Math.max(FRICTION.low(), Math.min(FRICTION.high(), friction + added));
        return new StackLine(ratio, changed, stack, moving);
    }
}
