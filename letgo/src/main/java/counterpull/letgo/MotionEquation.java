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
        int way = sense.sign();
        double rubber = machine.rubber(x, sense);
        double friction = machine.friction(x);
        double bend = machine.inertiaSlope(x) + way * machine.rubbedInertiaSlope(x);
        double force = machine.weight(x) + rubber - way * friction - bend * v * v / 2;
        double acceleration = force / (machine.inertia(x) + way * machine.rubbedInertia(x));
        double rubs = friction + machine.rubbedInertia(x) * acceleration + machine.rubbedInertiaSlope(x) * v * v / 2;
        return new double[] {v, acceleration, way * rubs * v, (machine.storing(x) - rubber) * v};
    }
}
