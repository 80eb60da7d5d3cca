package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Friction;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Odd but possible questions to an exercise's profile: each gets a true answer or a refusal that says why. */
class ExerciseOddInputsTest {
    private static final Motion CURL = new Hinge(Joint.ELBOW, -Math.PI / 2, Map.of(), Hinge.Lie.UPRIGHT);
    private static final BodyPoint HAND = new BodyPoint("hand", 0, new Vec(0.3, 0));

    private static WorkingRange degrees(double bottom, double top) {
        return new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
    }

    private static ExerciseProfile curl(Tempo tempo, Resistance... resists) {
        Exercise exercise = new Exercise(CURL, List.of(resists), 1);
        return ExerciseProfile.of(new ExerciseTask(Examples.both(degrees(20, 120)), exercise, 0, tempo, 101));
    }

    @Test
    void aJointThatIsNotPartOfTheExerciseIsNoOtherJoint() {
        ExerciseProfile profile = curl(Examples.tempo());
        ExerciseLimb limb = profile.limbs().get(0);
        assertThatThrownBy(() -> limb.torque(Joint.KNEE, Phase.HELD, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("knee");
        assertThatThrownBy(() -> limb.effort(Joint.HIP, Phase.LIFTING, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hip");
        assertThatThrownBy(() -> Challenge.of(profile, Joint.KNEE, Phase.HELD))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anEffortThatIsNotKnownIsHardestNowhere() {
        Challenge challenge = Challenge.of(curl(Examples.tempo()), Joint.ELBOW, Phase.HELD);
        assertThat(challenge.efforts().hardest()).isEqualTo("not known");
        assertThat(new Challenge.Thirds(Double.NaN, 1, 2).hardest()).isEqualTo("not known");
        assertThat(challenge.thirds().hardest()).isEqualTo("most at the top");
        assertThat(new Challenge.Thirds(0, 0, 0).hardest()).isEqualTo("nearly even");
    }

    @Test
    void aBounceOfAHingeIsToldInItsOwnUnits() {
        assertThatThrownBy(() -> curl(new Bounce(6, 6, 2)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.unit()).isEqualTo("m or rad"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-200, 1e-9, 1e300})
    void timesThatOverflowAreRefused(double time) {
        assertThatThrownBy(() -> new FullStop(new Tempo.Seconds(time, 0, 2, 0))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Flowing(2, time, Flowing.Turn.BOTH)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Bounce(0.5, 0.5, time)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Bounce(Math.max(time, 1 / time), 0.5, 1)).isInstanceOf(Refusal.class);
    }

    /** What a scale read on the way down is zero or more, so what lies between the readings is, too. */
    @Test
    void aMeasuredMachineNeverPushesBetweenItsReadings() {
        List<MeasuredProfile.Reading> readings = List.of(
                reading(10, 0, 0),
                reading(40, 30, 0),
                reading(70, 35, 30),
                reading(100, 200, 0),
                reading(130, 210, 205));
        MeasuredProfile machine = new MeasuredProfile(
                "machine", new MeasuredProfile.Force(HAND, new MeasuredProfile.Angle(Joint.ELBOW)), readings);
        ExerciseProfile profile = curl(Examples.tempo(), machine);
        Pull pull = profile.limbs().get(0).pulls().get(0);
        for (int cell = 0; cell < 303; cell++) {
            assertThat(pull.size(cell, 0)).isGreaterThanOrEqualTo(0);
        }
    }

    private static MeasuredProfile.Reading reading(double degrees, double up, double down) {
        return new MeasuredProfile.Reading(Angles.radians(degrees), up, down);
    }

    @Test
    void limbsThatLiftToOppositeEndsAreToldSo() {
        Person person = new Person(80, List.of(limb(Side.LEFT, degrees(20, 120)), limb(Side.RIGHT, degrees(120, 20))));
        ExerciseTask task = new ExerciseTask(person, new Exercise(CURL, List.of(), 1), 0, Examples.tempo(), 11);
        assertThatThrownBy(task::range)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.EMPTY_RANGE))
                .hasMessageContaining("opposite ends");
    }

    private static Limb limb(Side side, WorkingRange range) {
        return new Limb(side, Examples.body().side(), 0.5, range, JointRanges.open(), LimbStrength.none());
    }

    @Test
    void aHeldJointThatIsNotBeyondTheHingeIsRefused() {
        assertThatThrownBy(() -> new Hinge(Joint.KNEE, 0, Map.of(Joint.HIP, 0.5), Hinge.Lie.UPRIGHT))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hip");
        assertThatThrownBy(() -> new Hinge(Joint.KNEE, 0, Map.of(Joint.KNEE, 0.5), Hinge.Lie.UPRIGHT))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void whereAFootTipsIsSaid() {
        Motion squat = new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.3)), 0.5);
        DeadWeight bar = new DeadWeight("bar", new BodyPoint("shoulders", 2, new Vec(0.45, 0)), Loaded.always(100));
        Tempo fast = new FullStop(new Tempo.Seconds(0.25, 0, 0.25, 0));
        Exercise exercise = new Exercise(squat, List.of(bar), 1);
        assertThatThrownBy(() ->
                        ExerciseProfile.of(new ExerciseTask(Examples.both(degrees(100, 10)), exercise, 0, fast, 101)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.CONTACT_LOST))
                .hasMessageMatching(".*(% of the range|bottom|top) while (lifting|lowering).*");
    }

    @Test
    void withoutAKneeNothingIsKnownOfAKneecap() {
        ExerciseLimb limb = curl(Examples.tempo()).limbs().get(0);
        assertThat(limb.kneecapStress(Phase.HELD, 50)).isNaN();
        assertThat(limb.kneecapForce(Phase.HELD, 50)).isNaN();
        assertThat(limb.quadricepsForce(Phase.HELD, 50)).isNaN();
        assertThat(limb.kneecapReach(50)).isEqualTo(Kneecap.Reach.ABSENT);
    }

    @Test
    void aMachineMeasuredByAnotherJointIsRefused() {
        List<MeasuredProfile.Reading> readings = List.of(reading(0, 10, 10), reading(140, 10, 10));
        assertThatThrownBy(() -> curl(
                        Examples.tempo(),
                        new MeasuredProfile("machine", new MeasuredProfile.Torque(Joint.KNEE), readings)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("knee");
        MeasuredProfile.Acts force = new MeasuredProfile.Force(HAND, new MeasuredProfile.Angle(Joint.HIP));
        assertThatThrownBy(() -> curl(Examples.tempo(), new MeasuredProfile("machine", force, readings)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("hip");
    }

    @Test
    void aBarThatIsMovedSquareToItsRailIsRefused() {
        Motion press =
                new StraightPath(new Reach.Hand(Optional.empty()), Math.PI / 2, new Vec(0.2, 0.1), new Vec(0.2, 0.3));
        double wrist = Examples.body().side().arm().orElseThrow().forearm().length();
        Carriage carriage = new Carriage(20, Counterweight.none(), Friction.none(), 100);
        GuidedMass bar = new GuidedMass(
                "bar", new BodyPoint("hand", 1, new Vec(wrist, 0)), 0, carriage, Loaded.Plates.ELSEWHERE);
        ExerciseTask task = new ExerciseTask(
                Examples.both(new WorkingRange(0, 0.2, 0)),
                new Exercise(press, List.of(bar), 1),
                0,
                Examples.tempo(),
                5);
        assertThatThrownBy(() -> ExerciseProfile.of(task))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("square to the rail");
    }

    @Test
    void aRatioThatNoPulleyHasIsRefused() {
        assertThatThrownBy(() -> new StackLine(1e-300, 0, Loaded.always(1), 0)).isInstanceOf(Refusal.class);
    }
}
