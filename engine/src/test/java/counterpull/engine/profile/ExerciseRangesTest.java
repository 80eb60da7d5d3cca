package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.Cable;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.SpeedLaw;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an exercise's range may be: how angles are counted, what no body does, and what happens between few positions. */
class ExerciseRangesTest {
    private static final Motion RAISE = hinge(Joint.SHOULDER, 90);

    private static Hinge hinge(Joint joint, double attitude) {
        return new Hinge(joint, Angles.radians(attitude), Map.of(), Hinge.Lie.UPRIGHT);
    }

    private static WorkingRange degrees(double bottom, double top) {
        return new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
    }

    private static ExerciseProfile profile(Motion motion, Limb limb, Tempo tempo, Resistance... resists) {
        Exercise exercise = new Exercise(motion, List.of(resists), 1);
        return ExerciseProfile.of(new ExerciseTask(new Person(80, List.of(limb)), exercise, 0, tempo, 3));
    }

    private static Limb limb(WorkingRange range, JointRanges ranges, LimbStrength strength) {
        return new Limb(Side.LEFT, Examples.body().side(), 1, range, ranges, strength);
    }

    private static Limb limb(WorkingRange range) {
        return limb(range, JointRanges.open(), LimbStrength.none());
    }

    @ParameterizedTest
    @CsvSource({"90, 90", "10, 90", "137, 0.3"})
    void anArmRaisedPastOverheadStaysPastIt(double trunk, double bottom) {
        Limb limb = limb(degrees(bottom, 190));
        ExerciseProfile profile = profile(hinge(Joint.SHOULDER, trunk), limb, Examples.tempo());
        assertThat(Angles.degrees(profile.limbs().get(0).angle(Joint.SHOULDER, 2)))
                .as("not −170°")
                .isCloseTo(190, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"90", "89", "37", "-110", "180", "133.3"})
    void overheadIsHalfATurnUpAndNeverDown(double trunk) {
        JointRanges ranges = JointRanges.open().with(Joint.SHOULDER, new Require.Limits(0, Math.PI));
        Limb limb = limb(degrees(0, 180), ranges, LimbStrength.none());
        ExerciseProfile profile = profile(hinge(Joint.SHOULDER, trunk), limb, Examples.tempo());
        assertThat(Angles.degrees(profile.limbs().get(0).angle(Joint.SHOULDER, 2)))
                .isCloseTo(180, within(1e-9));
    }

    @Test
    void strengthPastOverheadIsThatOfThePosture() {
        DrawnCurve curve = DrawnCurve.flat(50, new AngleRange(0, Angles.radians(200)), 0.1, new SpeedLaw.AnySpeed());
        Limb limb = limb(
                degrees(90, 190),
                JointRanges.open(),
                LimbStrength.none().with(Action.SHOULDER_FLEXION, curve).with(Action.SHOULDER_EXTENSION, curve));
        LimbProfile found = profile(RAISE, limb, Examples.tempo()).limbs().get(0);
        double torque = found.torque(Joint.SHOULDER, Phase.HELD, 2);
        assertThat(found.effort(Joint.SHOULDER, Phase.HELD, 2)).isCloseTo(Math.abs(torque) / 50, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"KNEE, 0, 10, -60", "KNEE, 0, 180, 90", "ELBOW, -90, 0, 200", "ANKLE, -90, 0, 80", "HIP, 90, 0, -80"})
    void whatNoBodyDoesIsRefused(Joint joint, double attitude, double bottom, double top) {
        assertThatThrownBy(() -> profile(hinge(joint, attitude), limb(degrees(bottom, top)), Examples.tempo()))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.PAST_JOINT_RANGE);
                    assertThat(refusal.unit()).isEqualTo("rad");
                    assertThat(Math.abs(refusal.value())).isGreaterThan(Math.abs(refusal.limit()));
                })
                .hasMessageContaining("which no body does");
    }

    @Test
    void anElbowHeldPastWhatElbowsDoIsRefused() {
        Hinge bent = new Hinge(Joint.SHOULDER, Math.PI / 2, Map.of(Joint.ELBOW, 3.3), Hinge.Lie.UPRIGHT);
        assertThatThrownBy(() -> profile(bent, limb(degrees(0, 90)), Examples.tempo()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("elbow flexion would be 189.1°");
    }

    /** The hand passes nearest to the shoulder a quarter up the line; at the three positions the elbow keeps its range. */
    @Test
    void anElbowBentTooFarBetweenThreePositionsIsRefused() {
        Motion press = new StraightPath(
                new Reach.Hand(Optional.empty()), Math.PI / 2, new Vec(0.2, -0.12), new Vec(0.2, 0.40));
        WorkingRange whole = new WorkingRange(0, 0.52, 0);
        ExerciseProfile free = profile(press, limb(whole), Examples.tempo());
        double most = free.limbs().get(0).angle(Joint.ELBOW, 0);
        assertThat(most).isGreaterThan(free.limbs().get(0).angle(Joint.ELBOW, 1));
        JointRanges ranges = JointRanges.open().with(Joint.ELBOW, new Require.Limits(0, most + 0.001));
        assertThatThrownBy(() -> profile(press, limb(whole, ranges, LimbStrength.none()), Examples.tempo()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.PAST_JOINT_RANGE))
                .hasMessageContaining("% of the range");
    }

    /** A full stroke speeds up most between its end and its middle, where three positions do not look. */
    @Test
    void aStackThatGoesSlackBetweenThreePositionsIsRefused() {
        Cable cable = new Cable(
                "cable",
                new BodyPoint("hand", 0, new Vec(0.3, 0)),
                new Vec(0.3, -1.2),
                new StackLine(1, 0, Loaded.always(10), 0));
        Tempo fast = new FullStop(new Tempo.Seconds(1, 0, 0.3, 0));
        assertThatThrownBy(() -> profile(hinge(Joint.ELBOW, -90), limb(degrees(60, 120)), fast, cable))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.SLACK_STACK));
    }

    /** A hand that is led through the pulley between the positions: the cable would turn round there. */
    @Test
    void aPulleyOnTheWayIsRefused() {
        Motion press =
                new StraightPath(new Reach.Hand(Optional.empty()), Math.PI / 2, new Vec(0.2, -0.12), new Vec(0.2, 0.4));
        double wrist = Examples.body().side().arm().orElseThrow().forearm().length();
        Cable cable = new Cable(
                "cable",
                new BodyPoint("hand", 1, new Vec(wrist, 0)),
                new Vec(0.2, 0.2013),
                new StackLine(2, 0, Loaded.always(10), 0));
        assertThatThrownBy(() -> profile(press, limb(new WorkingRange(0, 0.52, 0)), Examples.tempo(), cable))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.COINCIDENT_POINTS));
    }
}
