package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.body.Action;

/**
 * Limits that no setup may pass: joint torque by action, kneecap joint stress, inertial force at the turn. Infinite where
 * none is stated. Immutable.
 */
public final class Caps {
    private final double[] torque;
    private final double kneecapStress;
    private final double turnForce;

    private Caps(double[] torque, double kneecapStress, double turnForce) {
        this.torque = torque;
        this.kneecapStress = kneecapStress;
        this.turnForce = turnForce;
    }

    /** No limit stated. */
    public static Caps none() {
        double[] torque = new double[Action.values().length];
        java.util.Arrays.fill(torque, Double.POSITIVE_INFINITY);
        return new Caps(torque, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** With a limit on the torque of one limb's action, N·m, above zero. */
    public Caps withTorque(Action action, double most) {
        double[] changed = torque.clone();
        changed[action.ordinal()] = Require.positive(most, "limit on " + action.words() + " torque", "N·m");
        return new Caps(changed, kneecapStress, turnForce);
    }

    /** With a limit on the kneecap joint's mean contact stress, Pa, above zero. */
    public Caps withKneecapStress(double most) {
        return new Caps(torque, Require.positive(most, "limit on kneecap joint stress", "Pa"), turnForce);
    }

    /** With a limit on the inertial force near the bottom, N, above zero. */
    public Caps withTurnForce(double most) {
        return new Caps(torque, kneecapStress, Require.positive(most, "limit on the force at the turn", "N"));
    }

    /** Most torque of one limb's action, N·m. */
    public double torque(Action action) {
        return torque[action.ordinal()];
    }

    /** Most kneecap joint stress, Pa. */
    public double kneecapStress() {
        return kneecapStress;
    }

    /** Most inertial force near the bottom, N. */
    public double turnForce() {
        return turnForce;
    }
}
