package counterpull.bench.repetitions;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.strength.StrengthCurve;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Where in the movement one joint action of one limb is asked most of what it has.
 *
 * @param limb left or right
 * @param action which action
 * @param at angle, phase and position
 * @param effort share of what the curve as it stands gives, at its speed
 * @param curve that curve
 */
public record HardestPlace(Side limb, Action action, Place at, double effort, StrengthCurve curve) {
    static final List<Phase> MOVING = List.of(Phase.LIFTING, Phase.LOWERING);

    /**
     * A place in the movement.
     *
     * @param angle anatomical angle of the joint, rad
     * @param phase lifting or lowering
     * @param position of the profile, bottom first
     */
    public record Place(double angle, Phase phase, int position) {}

    /** The hardest places of one limb's joint, one for each action that is asked and known; moving only. */
    static Map<Action, HardestPlace> of(LimbProfile limb, Joint joint, int positions) {
        Map<Action, HardestPlace> found = new EnumMap<>(Action.class);
        for (Phase phase : MOVING) {
            for (int i = 0; i < positions; i++) {
                double effort = limb.effort(joint, phase, i);
                Action action = limb.asked(joint, phase, i);
                HardestPlace before = found.get(action);
                if (effort > (before == null ? 0 : before.effort)) {
                    found.put(action, place(limb, joint, new Place(limb.angle(joint, i), phase, i)));
                }
            }
        }
        return found;
    }

    private static HardestPlace place(LimbProfile limb, Joint joint, Place at) {
        Action action = limb.asked(joint, at.phase, at.position);
        double effort = limb.effort(joint, at.phase, at.position);
        StrengthCurve curve = limb.limb().strength().of(action).orElseThrow();
        return new HardestPlace(limb.side(), action, at, effort, curve);
    }

    /** Standard deviation of the log of its strength there as the curve stands. */
    double logSd() {
        return curve.logSd(at.angle);
    }

    /** What the curve gives held still there, N·m. */
    double held() {
        return curve.held(at.angle);
    }

    /** As a person says it. */
    public String words() {
        return action.words() + " " + limb.words();
    }
}
