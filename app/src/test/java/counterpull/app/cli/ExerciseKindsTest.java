package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Contact;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.profile.Sled;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.Lift;
import counterpull.scenario.content.Resisting;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every kind of movement and of what resists occurs in the library: nothing can be computed of which there is no example to start from. */
class ExerciseKindsTest {
    private static final Set<Class<?>> FOUND = new HashSet<>();
    private static final Set<Action> LIFTS = EnumSet.noneOf(Action.class);
    private static final Set<Ride> STACK_DRIVES = EnumSet.noneOf(Ride.class);

    @BeforeAll
    static void look() {
        for (String name : LibraryExercises.names()) {
            look(LibraryExercises.scenario(name));
        }
    }

    private static void look(Scenario scenario) {
        if (scenario instanceof ExerciseScenario exercise) {
            motion(exercise.doing().motion());
            exercise.doing().resists().stream().map(Resisting::resistance).forEach(ExerciseKindsTest::resistance);
            if (exercise.doing().stroke().lift() instanceof Lift.Turning turning) {
                LIFTS.add(turning.action());
            }
        } else if (scenario instanceof PressScenario press) {
            Sled sled = press.machine().sled();
            sled.stack().ifPresent(stack -> STACK_DRIVES.add(sled.rail().ride()));
        }
    }

    private static void motion(Motion motion) {
        FOUND.add(motion.getClass());
        if (motion instanceof StraightPath path) {
            FOUND.add(path.reach().getClass());
        } else if (motion instanceof BalancedStand stand) {
            FOUND.add(stand.drive().getClass());
        }
    }

    private static void resistance(Resistance resistance) {
        FOUND.add(resistance.getClass());
        if (resistance instanceof Lever lever) {
            FOUND.add(lever.frame().contact().getClass());
        } else if (resistance instanceof CamStack cam) {
            FOUND.add(cam.frame().contact().getClass());
        } else if (resistance instanceof StretchLine line) {
            FOUND.add(line.from().getClass());
            FOUND.add(line.to().getClass());
        }
    }

    private static void allOf(Class<?> family) {
        assertThat(FOUND).contains(family.getPermittedSubclasses());
    }

    @Test
    void everyMotion() {
        allOf(Motion.class);
        allOf(Reach.class);
        allOf(StandDrive.class);
    }

    @Test
    void everythingThatResists() {
        allOf(Resistance.class);
        allOf(Contact.class);
        allOf(LineEnd.class);
    }

    @Test
    void aPressOnAStackWithEitherEndDriven() {
        assertThat(STACK_DRIVES).containsExactlyInAnyOrder(Ride.values());
    }

    @Test
    void theActionsThatAHingeTrains() {
        assertThat(LIFTS)
                .containsAll(List.of(
                        Action.KNEE_EXTENSION,
                        Action.KNEE_FLEXION,
                        Action.HIP_EXTENSION,
                        Action.HIP_FLEXION,
                        Action.HIP_ABDUCTION,
                        Action.ANKLE_PLANTARFLEXION,
                        Action.ELBOW_FLEXION,
                        Action.ELBOW_EXTENSION,
                        Action.SHOULDER_FLEXION,
                        Action.SHOULDER_ABDUCTION,
                        Action.SHOULDER_EXTERNAL_ROTATION));
    }
}
