package counterpull.picture;

import counterpull.engine.load.Carrier;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one thing that resists does to one limb at one point: the sum of its pulls there, as a force, N, or a couple, N·m, on the body,
 * this limb's share. Read-only.
 */
final class Hit {
    private final ExerciseLimb limb;
    private final Resistance resists;
    private final BodyPoint at;
    private final Kind kind;
    private final List<Integer> pulls = new ArrayList<>();

    /** What acts. */
    enum Kind {
        FORCE,
        COUPLE
    }

    private Hit(ExerciseLimb limb, Resistance resists, Pull first) {
        this.limb = limb;
        this.resists = resists;
        at = first.at();
        kind = kind(first);
    }

    private static Kind kind(Pull pull) {
        return pull.isCouple() ? Kind.COUPLE : Kind.FORCE;
    }

    /** Everything that acts on one limb, in the order of what resists. */
    static List<Hit> of(ExerciseProfile profile, int index) {
        ExerciseLimb limb = profile.limbs().get(index);
        double gravity = profile.task().exercise().motion().gravity();
        List<Hit> hits = new ArrayList<>();
        int pull = 0;
        for (Resistance resists : profile.task().exercise().resists()) {
            int from = hits.size();
            int last = pull + resists.on(limb.path(), gravity).size();
            for (; pull < last; pull++) {
                hit(hits, from, new Hit(limb, resists, limb.pulls().get(pull)))
                        .pulls
                        .add(pull);
            }
        }
        return hits;
    }

    // pulls of one thing on one point are one force
    private static Hit hit(List<Hit> hits, int from, Hit other) {
        for (Hit hit : hits.subList(from, hits.size())) {
            if (hit.kind == other.kind && hit.at.equals(other.at)) {
                return hit;
            }
        }
        hits.add(other);
        return other;
    }

    /** The machine through whose contact it comes. */
    Optional<Carrier> carrier() {
        return limb.pulls().get(pulls.get(0)).carrier();
    }

    /** Whether it is a couple that only says where along the limb a rolling pad's force acts. */
    boolean rolls() {
        return kind == Kind.COUPLE && carrier().isPresent();
    }

    Resistance resists() {
        return resists;
    }

    BodyPoint at() {
        return at;
    }

    Kind kind() {
        return kind;
    }

    /** What acts, as a person says it. */
    String words() {
        return limb.pulls().get(pulls.get(0)).words();
    }

    /** Force on this limb, N. */
    Vec force(Phase phase, int position) {
        Vec sum = new Vec(0, 0);
        for (int pull : pulls) {
            Vec way = limb.pulls().get(pull).direction(position);
            sum = sum.plus(way.times(limb.share() * limb.size(pull, phase, position)));
        }
        return sum;
    }

    /** Couple on this limb, N·m, counter-clockwise in the plane. */
    double couple(Phase phase, int position) {
        double sum = 0;
        for (int pull : pulls) {
            sum += limb.share() * limb.size(pull, phase, position);
        }
        return sum;
    }

    /** How much: N or N·m, without direction. */
    double amount(Phase phase, int position) {
        return kind == Kind.FORCE ? force(phase, position).norm() : Math.abs(couple(phase, position));
    }
}
