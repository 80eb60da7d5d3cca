package counterpull.letgo;

import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * One stretch of the movement, all in one way: from a release or a turn to the next turn, to an end, to a rubber's tested length
 * or to the end of the time. Integrated with steps that adapt, its end found by event detection.
 *
 * <p>Source: Dormand–Prince 8(5,3), Hairer E, Nørsett SP, Wanner G 1993, Solving Ordinary Differential Equations I, as Hipparchus has it.
 */
final class Leg {
    private static final double SHORTEST_STEP = 1e-13;
    private static final double LONGEST_STEP = 0.05;
    private static final double ABSOLUTE = 1e-12;
    private static final double RELATIVE = 1e-11;
    private static final double FAR = 1;
    private final LoneMachine machine;
    private final Sense sense;
    private final Watch end;
    private final Watch tested;
    private final Watch turn;
    private double fastest;
    private double liveliest;

    Leg(LoneMachine machine, Sense sense) {
        this.machine = machine;
        this.sense = sense;
        Ends ends = machine.ends();
        end = Watch.stopping(now -> ends.left(place(now), sense));
        // an infinite room has no place in a search for a zero
        tested = Watch.stopping(now -> Math.min(FAR, machine.testedRoom(place(now))));
        turn = Watch.stopping(now -> sense.sign() * speed(now));
    }

    /** The state where this stretch ends. */
    ODEState follow(ODEState from, double until) {
        ODEIntegrator integrator = new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, ABSOLUTE, RELATIVE);
        integrator.addEventDetector(end);
        integrator.addEventDetector(tested);
        integrator.addEventDetector(turn);
        integrator.addEventDetector(Watch.noting(now -> now.getPrimaryDerivative()[MotionEquation.SPEED], this::note));
        note(from);
        ODEStateAndDerivative to = integrator.integrate(new MotionEquation(machine, sense), from, until);
        note(to);
        return to;
    }

    private void note(ODEState now) {
        double speed = speed(now);
        fastest = Math.max(fastest, Math.abs(speed));
        liveliest = Math.max(liveliest, machine.inertia(place(now)) * speed * speed / 2);
    }

    private static double place(ODEState state) {
        return state.getPrimaryState()[MotionEquation.PLACE];
    }

    private static double speed(ODEState state) {
        return state.getPrimaryState()[MotionEquation.SPEED];
    }

    boolean atEnd() {
        return end.rung();
    }

    boolean atTestedLength() {
        return tested.rung();
    }

    boolean turned() {
        return turn.rung();
    }

    /** The largest speed on the way, without sign. */
    double fastest() {
        return fastest;
    }

    /** The largest kinetic energy of its fastest moments, J. */
    double liveliest() {
        return liveliest;
    }
}
