package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.crosscheck.RandomExercise;
import counterpull.engine.load.Knob;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Each input does one thing and nothing else, and says where its uncertainty comes from. */
class InputsTest {
    /** A doubt moved by nothing leaves every torque as it is. */
    @Test
    void nothingMovesNothing() {
        Doubts<PressTrial> doubts = Doubts.of(UnsureTasks.onAStop(), Stated.nothing());
        PressProfile nominal = doubts.nominal().profile();
        for (Doubt<PressTrial> doubt : doubts.all()) {
            PressProfile same = doubt.change()
                    .of(doubts.nominal(), new double[doubt.dimensions()], 0)
                    .profile();
            for (Joint joint : Joint.LEG) {
                for (int i = 0; i < nominal.positions(); i++) {
                    double torque = nominal.limbs().get(0).torque(joint, Phase.LIFTING, i);
                    assertThat(same.limbs().get(0).torque(joint, Phase.LIFTING, i))
                            .as(doubt.name())
                            .isCloseTo(torque, within(1e-9));
                }
            }
        }
    }

    /** Moved by one standard uncertainty, each does something: to a torque or to an effort. */
    @Test
    void eachMovesSomething() {
        Doubts<PressTrial> doubts = Doubts.of(UnsureTasks.onAStop(), Stated.nothing());
        PressProfile nominal = doubts.nominal().profile();
        for (Doubt<PressTrial> doubt : doubts.all()) {
            double[] z = new double[doubt.dimensions()];
            // stronger on one side would leave the other side, which then limits, as it is
            java.util.Arrays.fill(z, -1);
            // a press that sits has no use for the trunk's length, nor this one for these two actions
            boolean idle = doubt.name().startsWith("trunk, hip to shoulder")
                    || doubt.name().endsWith("hip flexion strength")
                    || doubt.name().endsWith("dorsiflexion strength");
            if (!idle) {
                PressProfile moved = doubt.change().of(doubts.nominal(), z, 0).profile();
                assertThat(moved.efforts()).as(doubt.name()).isNotEqualTo(nominal.efforts());
            }
        }
    }

    /** Every knob of everything that resists, turned to where it changes nothing. */
    @Test
    void neutralKnobsChangeNothing() {
        RandomExercise random = new RandomExercise(3);
        for (int k = 0; k < 60; k++) {
            ExerciseTask task = random.next();
            ExerciseProfile profile = ExerciseProfile.of(task);
            List<Resistance> turned = new ArrayList<>();
            for (Resistance resistance : task.exercise().resists()) {
                for (int knob = 0; knob < resistance.knobs().size(); knob++) {
                    Knob one = resistance.knobs().get(knob);
                    resistance = one.turned().apply(one.kind().neutral());
                }
                turned.add(resistance);
            }
            Exercise same = new Exercise(
                    task.exercise().motion(), turned, task.exercise().borne());
            ExerciseProfile again = ExerciseProfile.of(task.with(same));
            Joint joint = profile.joints().get(0);
            for (int i = 0; i < profile.positions(); i++) {
                assertThat(again.limbs().get(0).torque(joint, Phase.LIFTING, i))
                        .isCloseTo(profile.limbs().get(0).torque(joint, Phase.LIFTING, i), within(1e-9));
            }
        }
    }

    @Test
    void whatIsStatedIsSaidToBe() {
        Stated stated = Stated.nothing().with(Input.RAIL_ANGLE, 0.02);
        assertThat(stated.source(Input.RAIL_ANGLE)).isEqualTo("stated");
        assertThat(stated.of(Input.RAIL_ANGLE)).isEqualTo(0.02);
        assertThat(stated.source(Input.PUSH)).startsWith("our assumption: ");
        assertThat(stated.of(Input.PUSH)).isCloseTo(Math.toRadians(5), within(1e-12));
    }

    @Test
    void onePieceOfRubberCanBeSurerThanTheOthers() {
        Stated stated =
                new Stated(Map.of(Input.RUBBER_PULL, 0.1), Map.of("T1", new Stated.Rubber(0.02, Double.NaN)), Map.of());
        assertThat(stated.pull("T1")).isEqualTo(new Stated.Known(0.02, "stated"));
        assertThat(stated.pull("T2").sd()).isEqualTo(0.1);
        assertThat(stated.naturalLength("T1").sd()).isEqualTo(Input.RUBBER_LENGTH.usual());
    }

    @Test
    void aNegativeUncertaintyIsRefused() {
        assertThatThrownBy(() -> Stated.nothing().with(Input.PLATES, -0.1))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("plates");
    }
}
