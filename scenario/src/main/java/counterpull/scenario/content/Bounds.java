package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.choice.Caps;
import counterpull.engine.choice.Goal.Straying;
import java.util.Map;

/**
 * What must not be passed; infinite where not stated.
 *
 * @param torque most torque of one limb by action, N·m; only stated ones
 * @param kneecapStress most mean contact stress of the kneecap joint, Pa
 * @param turnForce most inertial force near the bottom, N
 * @param unevenSides most plates on one side more than on the other, also while loading, kg
 * @param straying over which push directions the limits hold
 */
public record Bounds(
        Map<Action, Double> torque, double kneecapStress, double turnForce, double unevenSides, Straying straying) {
    public Bounds {
        torque = Map.copyOf(torque);
    }

    /** Nothing stated. */
    public static Bounds none() {
        double notStated = Double.POSITIVE_INFINITY;
        return new Bounds(Map.of(), notStated, notStated, notStated, Straying.AS_TOLD);
    }

    /** As the engine takes it. */
    public Caps caps() {
        Caps caps = Caps.none();
        for (Action action : Action.values()) {
            if (torque.containsKey(action)) {
                caps = caps.withTorque(action, torque.get(action));
            }
        }
        caps = Double.isInfinite(kneecapStress) ? caps : caps.withKneecapStress(kneecapStress);
        return Double.isInfinite(turnForce) ? caps : caps.withTurnForce(turnForce);
    }
}
