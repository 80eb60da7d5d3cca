package counterpull.picture;

import counterpull.engine.load.Carrier;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One place where something acts on the limb: all that comes through one machine's contact together, or one thing that acts on the body
 * itself.
 */
final class Touch {
    private final List<Hit> hits = new ArrayList<>();

    private Touch(Hit first) {
        hits.add(first);
    }

    /** Every place where something acts on one limb. A couple that only moves a rolling pad's force belongs to that pad. */
    static List<Touch> of(ExerciseProfile profile, int limb) {
        List<Touch> touches = new ArrayList<>();
        for (Hit hit : Hit.of(profile, limb)) {
            if (hit.rolls()) {
                continue;
            }
            Optional<Touch> same = touches.stream()
                    .filter(touch ->
                            hit.carrier().isPresent() && touch.carrier().equals(hit.carrier()))
                    .findFirst();
            same.ifPresentOrElse(touch -> touch.hits.add(hit), () -> touches.add(new Touch(hit)));
        }
        return touches;
    }

    Optional<Carrier> carrier() {
        return hits.get(0).carrier();
    }

    /** The lever whose pad rolls along the limb, if it acts through one. */
    Optional<LeverFrame> roller() {
        return carrier()
                .filter(LeverFrame.class::isInstance)
                .map(LeverFrame.class::cast)
                .filter(frame -> !frame.contact().staysOnLimb());
    }

    BodyPoint at() {
        return hits.get(0).at();
    }

    Hit.Kind kind() {
        return hits.get(0).kind();
    }

    /** What acts, as a person says it. */
    String words() {
        if (hits.size() == 1) {
            return hits.get(0).words();
        }
        return onLever()
                ? carrier().orElseThrow().words()
                : String.join(" and ", hits.stream().map(Hit::words).distinct().toList());
    }

    private boolean onLever() {
        return carrier().filter(LeverFrame.class::isInstance).isPresent();
    }

    /** Force on this limb, N. */
    Vec force(Phase phase, int position) {
        Vec sum = new Vec(0, 0);
        for (Hit hit : hits) {
            sum = sum.plus(hit.force(phase, position));
        }
        return sum;
    }

    /** Couple on this limb, N·m. */
    double couple(Phase phase, int position) {
        return hits.get(0).couple(phase, position);
    }

    /** Where it is drawn, m. */
    Vec place(Limbwork work, int position) {
        if (carrier().isPresent() && carrier().get() instanceof LeverFrame frame) {
            return frame.over(work.path()).contact(position);
        }
        return work.drawn(at(), position);
    }
}
