package counterpull.letgo;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/**
 * Something to look out for while a machine moves: a number that falls through zero. It stops the integration there, or only
 * notes the moment.
 */
final class Watch implements ODEEventDetector {
    private static final double LOOK_EVERY = 0.01;
    private static final double TO_WITHIN = 1e-13;
    private static final int TRIES = 200;
    private final ToDoubleFunction<ODEStateAndDerivative> number;
    private final ODEEventHandler handler;
    private boolean rung;

    private Watch(ToDoubleFunction<ODEStateAndDerivative> number, ODEEventHandler handler) {
        this.number = number;
        this.handler = handler;
    }

    /** Stops where the number falls through zero. */
    static Watch stopping(ToDoubleFunction<ODEStateAndDerivative> number) {
        return new Watch(number, (state, detector, rising) -> {
            if (rising) {
                return Action.CONTINUE;
            }
            ((Watch) detector).rung = true;
            return Action.STOP;
        });
    }

    /** Notes every moment at which the number goes through zero. */
    static Watch noting(ToDoubleFunction<ODEStateAndDerivative> number, Note note) {
        return new Watch(number, (state, detector, rising) -> {
            note.at(state);
            return Action.CONTINUE;
        });
    }

    /** What is done with a noted moment. */
    interface Note {
        void at(ODEStateAndDerivative state);
    }

    /** Whether it has stopped the integration. */
    boolean rung() {
        return rung;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return number.applyAsDouble(state);
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(LOOK_EVERY);
    }

    @Override
    public int getMaxIterationCount() {
        return TRIES;
    }

    @Override
    public BracketingNthOrderBrentSolver getSolver() {
        return new BracketingNthOrderBrentSolver(0, TO_WITHIN, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
        return handler;
    }
}
