package counterpull.engine.uncertainty;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.List;
import java.util.Optional;

/**
 * The hardest place of a profile: where the largest known effort of the named joints lies, over all phases and positions. Ties go to the
 * place that is looked at first: held before lifting before lowering, bottom first, proximal first, left first.
 *
 * @param side whose limb
 * @param joint which joint
 * @param action what it is asked for
 * @param phase in which phase
 * @param position at which position
 * @param angle of the joint there, rad
 * @param effort the largest effort, 1 = all that this person has
 */
public record Hardest(Side side, Joint joint, Action action, Phase phase, int position, double angle, double effort) {
    private static final Phase[] PHASES = Phase.values();

    /** Where it lies; empty where no effort is known. */
    public static Optional<Hardest> of(Profile profile, List<Joint> named) {
        Hardest found = null;
        for (Phase phase : PHASES) {
            for (int i = 0; i < profile.positions(); i++) {
                for (Joint joint : named) {
                    for (LimbProfile limb : profile.limbs()) {
                        double effort = limb.effort(joint, phase, i);
                        if (found == null ? effort >= 0 : effort > found.effort) {
                            found = at(limb, joint, phase, i, effort);
                        }
                    }
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private static Hardest at(LimbProfile limb, Joint joint, Phase phase, int position, double effort) {
        return new Hardest(
                limb.side(),
                joint,
                limb.asked(joint, phase, position),
                phase,
                position,
                limb.angle(joint, position),
                effort);
    }

    /** The largest effort that one limb is asked for in one action; empty where none is known. */
    static Optional<Hardest> of(LimbProfile limb, Joint joint, Action action, int positions) {
        Hardest found = null;
        for (Phase phase : PHASES) {
            for (int i = 0; i < positions; i++) {
                double effort = limb.effort(joint, phase, i);
                boolean asked = limb.asked(joint, phase, i) == action;
                if (asked && (found == null ? effort >= 0 : effort > found.effort)) {
                    found = at(limb, joint, phase, i, effort);
                }
            }
        }
        return Optional.ofNullable(found);
    }
}
