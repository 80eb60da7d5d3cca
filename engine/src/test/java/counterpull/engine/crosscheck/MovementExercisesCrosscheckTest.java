package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Side;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Profiles of random straight paths and stands with weights on them, against energies alone. */
class MovementExercisesCrosscheckTest {
    /** As for hinges: the stencil's own error is below 1e-10 of the largest power. */
    private static final double TOLERANCE = 1e-8;

    @Test
    void straightPaths() {
        RandomMovement random = new RandomMovement(2031);
        check(random::straight);
    }

    @Test
    void balancedStands() {
        RandomMovement random = new RandomMovement(2032);
        check(random::stand);
    }

    private static void check(Supplier<RandomMovement.Drawn> random) {
        int compared = 0;
        for (int trial = 0; trial < 30; trial++) {
            compared += ExercisePower.check(ExerciseProfile.of(task(random.get())), TOLERANCE, i -> false);
        }
        assertThat(compared).isGreaterThan(30 * 300);
    }

    private static ExerciseTask task(RandomMovement.Drawn drawn) {
        List<Resistance> resists = new ArrayList<>();
        for (Motion.Carried carried : drawn.carried()) {
            resists.add(new DeadWeight(carried.at().name(), carried.at(), Loaded.always(carried.mass())));
        }
        Limb limb = new Limb(Side.LEFT, drawn.body(), 1, drawn.range(), JointRanges.anyPosture(), LimbStrength.none());
        Tempo tempo = new FullStop(new Tempo.Seconds(2.2, 0, 1.3, 0));
        Exercise exercise = new Exercise(drawn.motion(), resists, drawn.share());
        return new ExerciseTask(new Person(70, List.of(limb)), exercise, 0, tempo, ExercisePower.POSITIONS);
    }
}
