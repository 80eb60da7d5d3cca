package counterpull.bench.repetitions;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The hardest places of a profile, by joint action, the sides of each together. */
final class Places {
    /** A joint asked less than this share of the hardest one's effort cannot have limited, and a floor so low tells nothing. */
    private static final double IDLE = 0.02;

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
}
