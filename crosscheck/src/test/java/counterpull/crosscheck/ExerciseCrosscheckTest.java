package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.crosscheck.RandomExercise;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.JointSense;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * Joint torques of random exercises, which the engine adds from terms, against the multibody library, which gets posture, motion and
 * every pull at once. What the pulls themselves should be is checked element by element elsewhere.
 */
class ExerciseCrosscheckTest {
    private static final int EXERCISES = 150;
    private static final int STEP = 20;

    /** Of the largest torque of the limb at that moment: rounding leaves 1e-13. */
    private static final double CLOSE = 1e-9;

    @Test
    void hingesWithWeights() {
        RandomExercise random = new RandomExercise(2024);
        Set<Joint> joints = check(random::next).joints;
        assertThat(joints).contains(Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.SHOULDER, Joint.ELBOW);
    }

    @Test
    void everyMovementWithEverythingThatResists() {
        Seen seen = check(new RandomLaden(2026)::next);
        assertThat(seen.movements).containsExactlyInAnyOrder("Hinge", "StraightPath", "BalancedStand");
        assertThat(seen.things)
                .containsExactlyInAnyOrder("DeadWeight", "Cable", "HangingChain", "Lever", "CamStack", "StretchLine");
    }

    private static final class Seen {
        final Set<Joint> joints = new TreeSet<>();
        final Set<String> movements = new TreeSet<>();
        final Set<String> things = new TreeSet<>();

        void add(ExerciseProfile profile) {
            joints.addAll(profile.limbs().get(0).joints());
            movements.add(profile.task().exercise().motion().getClass().getSimpleName());
            profile.task()
                    .exercise()
                    .resists()
                    .forEach(thing -> things.add(thing.getClass().getSimpleName()));
        }
    }

    private static Seen check(Supplier<ExerciseTask> random) {
        Seen seen = new Seen();
        int computed = 0;
        for (int k = 0; k < EXERCISES; k++) {
            Optional<ExerciseProfile> profile = computed(random);
            if (profile.isPresent()) {
                for (ExerciseLimb limb : profile.get().limbs()) {
                    assertThat(worst(profile.get(), limb, 1))
                            .as("exercise %s: %s", k, profile.get().task().exercise())
                            .isLessThan(CLOSE);
                }
                seen.add(profile.get());
                computed++;
            }
        }
        assertThat(computed).as("exercises that can be done").isGreaterThan(EXERCISES / 3);
        return seen;
    }

    /** A control: pulls a millionth too large in one of the two are seen. */
    @Test
    void aMillionthOfThePullsIsSeen() {
        RandomExercise random = new RandomExercise(2025);
        for (int k = 0; k < EXERCISES / 5; k++) {
            computed(random::next)
                    .ifPresent(
                            profile -> assertThat(worst(profile, profile.limbs().get(0), 1 + 1e-6))
                                    .isGreaterThan(CLOSE));
        }
    }

    /** Empty where a line goes slack or a pad loses contact. */
    private static Optional<ExerciseProfile> computed(Supplier<ExerciseTask> random) {
        try {
            return Optional.of(ExerciseProfile.of(random.get()));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** Largest difference at any joint, phase and position, over the largest torque of the limb at that moment and 1 N·m. */
    private static double worst(ExerciseProfile profile, ExerciseLimb limb, double factor) {
        double gravity = profile.task().exercise().motion().gravity();
        ChainPath path = limb.path();
        LibraryChain library = new LibraryChain(path.chain(), 0, -gravity);
        double[] theirs = new double[path.segments()];
        double worst = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i += STEP) {
                PathRoutes.Moment at = new PathRoutes.Moment(phase, i);
                PathRoutes.library(library, path, at);
                for (int p = 0; p < limb.pulls().size(); p++) {
                    hang(library, limb.pulls().get(p), factor * limb.share() * limb.size(p, phase, i), i);
                }
                library.torques(theirs);
                worst = Math.max(worst, mismatch(limb, theirs, at));
            }
        }
        return worst;
    }

    private static void hang(LibraryChain library, Pull pull, double size, int i) {
        int segment = pull.at().segment();
        if (pull.isCouple()) {
            library.turn(segment, size);
            return;
        }
        Vec place = pull.at().at();
        Vec way = pull.direction(i);
        library.loadAt(segment, new Vector3D(place.x(), place.y(), 0), new Vector3D(way.x() * size, way.y() * size, 0));
    }

    private static double mismatch(ExerciseLimb limb, double[] theirs, PathRoutes.Moment at) {
        double size = 1;
        double most = 0;
        for (int k = 0; k < theirs.length; k++) {
            JointSense sense = limb.path().senses().get(k);
            double ours = limb.torque(sense.joint(), at.phase(), at.position());
            size = Math.max(size, Math.abs(theirs[k]));
            most = Math.max(most, Math.abs(ours - sense.torqueSign() * theirs[k]));
        }
        return most / size;
    }
}
