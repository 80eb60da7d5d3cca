package counterpull.report.result;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;

/**
 * One row of a result: a limb in a phase at a position.
 *
 * @param profile whose
 * @param limb index of the limb in the person's order
 * @param phase held, lifting or lowering
 * @param position counted from the bottom, 0 first
 */
public record Spot(Profile profile, int limb, Phase phase, int position) {
    /** The limb itself. */
    LimbProfile leg() {
        return profile.limbs().get(limb);
    }

    /** The profile of a press; for fields that only a press has. */
    PressProfile press() {
        return (PressProfile) profile;
    }

    /** The limb of a press. */
    PressLimb pressLeg() {
        return press().limbs().get(limb);
    }

    /** Every position of one limb in one phase. */
    static List<Spot> along(Profile profile, int limb, Phase phase) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < profile.positions(); i++) {
            spots.add(new Spot(profile, limb, phase, i));
        }
        return spots;
    }

    /** Every limb, phase and position. */
    static List<Spot> all(Profile profile) {
        List<Spot> spots = new ArrayList<>();
        for (int k = 0; k < profile.limbs().size(); k++) {
            for (Phase phase : Phase.values()) {
                spots.addAll(along(profile, k, phase));
            }
        }
        return spots;
    }
}
