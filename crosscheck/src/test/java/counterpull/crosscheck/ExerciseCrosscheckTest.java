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
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * Joint torques of random exercises, which the engine adds from terms, against the multibody library, which gets posture, motion and
 * every pull at once. What the pulls themselves should be is checked element by element elsewhere.
 */
class ExerciseCrosscheckTest {
    private static final int EXERCISES = 150;
    private static final int STEP = 25;

    /** Of the largest torque of the limb at that moment: rounding leaves 1e-13. */
    private static final double CLOSE = 1e-9;

    @Test
    void torquesOfWholeExercises() {
        RandomExercise random = new RandomExercise(2024);
        int computed = 0;
        Set<Joint> joints = new TreeSet<>();
        for (int k = 0; k < EXERCISES; k++) {
            Optional<ExerciseProfile> profile = computed(random);
            if (profile.isPresent()) {
                for (ExerciseLimb limb : profile.get().limbs()) {
                    assertThat(worst(profile.get(), limb, 1))
                            .as("exercise %s: %s", k, profile.get().task().exercise())
                            .isLessThan(CLOSE);
                }
                joints.addAll(profile.get().limbs().get(0).joints());
                computed++;
            }
        }
        assertThat(computed).as("exercises that can be done").isGreaterThan(EXERCISES / 2);
        assertThat(joints).contains(Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.SHOULDER, Joint.ELBOW);
    }

    /** A control: pulls a millionth too large in one of the two are seen. */
    @Test
    void aMillionthOfThePullsIsSeen() {
        RandomExercise random = new RandomExercise(2025);
        for (int k = 0; k < EXERCISES / 5; k++) {
            computed(random)
                    .ifPresent(
                            profile -> assertThat(worst(profile, profile.limbs().get(0), 1 + 1e-6))
                                    .isGreaterThan(CLOSE));
        }
    }

    /** Empty where a line goes slack or a pad loses contact. */
    private static Optional<ExerciseProfile> computed(RandomExercise random) {
        try {
            return Optional.of(ExerciseProfile.of(random.next()));
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
