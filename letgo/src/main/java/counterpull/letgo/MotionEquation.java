package counterpull.letgo;

import org.hipparchus.ode.OrdinaryDifferentialEquation;

/**
 * The equation of motion of a machine that moves one way, as first-order equations for place, speed, energy lost to friction and
 * energy lost in rubber. Friction and rubber stay on the side of that way even where a trial step of the integrator turns
 * back, so that the right-hand side is smooth.
 *
 * @param machine what moves
 * @param sense which way
 */
record MotionEquation(LoneMachine machine, Sense sense) implements OrdinaryDifferentialEquation {
    static final int PLACE = 0;
    static final int SPEED = 1;
    static final int TO_FRICTION = 2;
    static final int TO_RUBBER = 3;

    @Override
    public int getDimension() {
        return 4;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
        double x = state[PLACE];
        double v = state[SPEED];
        double rubber = machine.rubber(x, sense);
        double friction = machine.friction(x);
        double force = machine.weight(x) + rubber - sense.sign() * friction - machine.inertiaSlope(x) * v * v / 2;
        return new double[] {
            v, force / machine.inertia(x), sense.sign() * friction * v, (machine.storing(x) - rubber) * v
        };
    }
}
