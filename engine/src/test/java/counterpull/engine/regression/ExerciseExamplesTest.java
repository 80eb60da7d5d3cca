package counterpull.engine.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The design's worked examples D to H: two independent derivations of our own, not published values. Tolerance: half a unit of the
 * last printed digit.
 */
class ExerciseExamplesTest {
    private static final double PRINTED = 5.1e-5;
    private static final Motion KNEE = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
    private static final Motion ELBOW = new Hinge(Joint.ELBOW, Angles.radians(-90), Map.of(), Hinge.Lie.UPRIGHT);

    private static ExerciseProfile profile(Motion motion, double bottom, double top, Resistance resistance) {
        WorkingRange range = new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
        Exercise exercise = new Exercise(motion, List.of(resistance), 1);
        double plates = resistance.takesPlates() ? 8 : 0;
        return ExerciseProfile.of(new ExerciseTask(Examples.alone(range), exercise, plates, Examples.tempo(), 5));
    }

    private static double[] torques(ExerciseProfile profile, Joint joint, Phase phase) {
        double[] torques = new double[profile.positions()];
        for (int i = 0; i < torques.length; i++) {
            torques[i] = profile.limbs().get(0).torque(joint, phase, i);
        }
        return torques;
    }

    @Test
    void dKneeExtensionWithACuff() {
        DeadWeight cuff = new DeadWeight("cuff", new BodyPoint("shank", 0, new Vec(0.35, 0)), Loaded.with(0));
        ExerciseProfile profile = profile(KNEE, 90, 0, cuff);
        assertThat(torques(profile, Joint.KNEE, Phase.HELD))
                .containsExactly(new double[] {0.7565, 15.8319, 28.4970, 36.8237, 39.5443}, within(PRINTED));
        double[] lifting = torques(profile, Joint.KNEE, Phase.LIFTING);
        assertThat(lifting[1]).isCloseTo(18.0375, within(PRINTED));
        assertThat(lifting[3]).isCloseTo(34.6181, within(PRINTED));
        double[] lowering = torques(profile, Joint.KNEE, Phase.LOWERING);
        assertThat(lowering).containsExactly(lifting, within(1e-9));
    }

    @Test
    void fElbowFlexionWithAWeight() {
        DeadWeight weight = new DeadWeight("dumbbell", new BodyPoint("hand", 0, new Vec(0.33, 0)), Loaded.always(10));
        ExerciseProfile profile = profile(ELBOW, 15, 125, weight);
        double[] held = torques(profile, Joint.ELBOW, Phase.HELD);
        assertThat(held[0]).isCloseTo(9.1543, within(PRINTED));
        assertThat(held[2]).isCloseTo(33.2364, within(PRINTED));
        assertThat(held[4]).isCloseTo(28.9730, within(PRINTED));
    }
}
