package counterpull.bench.repetitions;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The hardest places of a profile, by joint action, the sides of each together. */
final class Places {
    /** A joint asked less than this share of the hardest one's effort cannot have limited, and a floor so low tells nothing. */
    private static final double IDLE = 0.02;
    /** Ours, as the next one. */
    private static final double MAY_LIMIT = 0.5;

    private static final double WEIGHTY = 0.1;

    private final Profile profile;
    private final Optional<Side> gaveOut;

    Places(Profile profile, Optional<Side> gaveOut) {
        this.profile = profile;
        this.gaveOut = gaveOut;
    }

    List<List<HardestPlace>> pairs() {
        Map<Action, List<HardestPlace>> found = new EnumMap<>(Action.class);
        double most = 0;
        for (LimbProfile limb : profile.limbs()) {
            if (gaveOut.isEmpty() || gaveOut.get() == limb.side()) {
                for (Joint joint : limb.joints()) {
                    for (HardestPlace place :
                            HardestPlace.of(limb, joint, profile.positions()).values()) {
                        found.computeIfAbsent(place.action(), action -> new ArrayList<>())
                                .add(place);
                        most = Math.max(most, place.effort());
                    }
                }
            }
        }
        double least = IDLE * most;
        found.values().forEach(sides -> sides.removeIf(place -> place.effort() < least));
        found.values().removeIf(List::isEmpty);
        return List.copyOf(found.values());
    }

    /**
     * Joint actions that may have given out as well, though nobody knows: the curve does not reach there and even its peak is asked half as
     * much as what is known at its hardest; or there is no curve, and the torque is a tenth or more of the largest. As a person says them.
     */
    List<String> notKnown() {
        Set<String> found = new LinkedHashSet<>();
        double effort = largest((limb, joint, phase, i) -> limb.effort(joint, phase, i));
        double torque = largest((limb, joint, phase, i) -> Math.abs(limb.torque(joint, phase, i)));
        each((limb, joint, phase, i) -> {
            double asked = Math.abs(limb.torque(joint, phase, i));
            Action action = limb.asked(joint, phase, i);
            double least = limb.limb()
                    .strength()
                    .of(action)
                    .map(curve -> MAY_LIMIT * effort * curve.peak())
                    .orElse(WEIGHTY * torque);
            if (!(limb.effort(joint, phase, i) > 0) && asked > 0 && asked >= least) {
                found.add(action.words() + " " + limb.side().words());
            }
        });
        return List.copyOf(found);
    }

    private interface Number {
        double of(LimbProfile limb, Joint joint, Phase phase, int position);
    }

    private interface Look {
        void at(LimbProfile limb, Joint joint, Phase phase, int position);
    }

    private double largest(Number number) {
        double[] most = {0};
        // what is not known is not larger
        each((limb, joint, phase, i) ->
                most[0] = number.of(limb, joint, phase, i) > most[0] ? number.of(limb, joint, phase, i) : most[0]);
        return most[0];
    }

    private void each(Look look) {
        for (LimbProfile limb : profile.limbs()) {
            if (gaveOut.isEmpty() || gaveOut.get() == limb.side()) {
                for (Joint joint : limb.joints()) {
                    for (Phase phase : HardestPlace.MOVING) {
                        for (int i = 0; i < profile.positions(); i++) {
                            look.at(limb, joint, phase, i);
                        }
                    }
                }
            }
        }
    }
}
