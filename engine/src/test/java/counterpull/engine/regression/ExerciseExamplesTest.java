package counterpull.engine.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Cable;
import counterpull.engine.load.Contact;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.StackLine;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.GroundContact;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The design's worked examples C to H: two independent derivations of our own, not published values. Tolerance: half a unit of the
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

    private static Lever lever(Contact contact) {
        LeverFrame frame = new LeverFrame(new Vec(0.03, -0.02), contact);
        LeverBody body = new LeverBody(5, 0.22, 0, 0.40);
        Horn horn = new Horn("horn", 0.40, Angles.radians(10), Loaded.always(25));
        return new Lever("lever", frame, body, List.of(horn), 0);
    }

    @Test
    void eKneeExtensionOnALeverWithARollerPad() {
        ExerciseProfile profile = profile(KNEE, 90, 0, lever(RollerPad.against(0, 0.32)));
        double[] held = torques(profile, Joint.KNEE, Phase.HELD);
        assertThat(new double[] {held[0], held[2], held[4]})
                .containsExactly(new double[] {8.0776, 105.1692, 128.1408}, within(PRINTED));
        ExerciseLimb limb = profile.limbs().get(0);
        assertThat(limb.force("lever", Phase.HELD, 2).norm()).isCloseTo(270.4604, within(PRINTED));
        double[] lifting = torques(profile, Joint.KNEE, Phase.LIFTING);
        assertThat(lifting[1]).isCloseTo(70.2023, within(PRINTED));
        assertThat(lifting[3]).isCloseTo(120.2858, within(PRINTED));
    }

    @Test
    void eKneeExtensionOnALeverWithACuff() {
        ExerciseProfile profile = profile(KNEE, 90, 0, lever(new Cuff(0, 0.32)));
        double[] held = torques(profile, Joint.KNEE, Phase.HELD);
        assertThat(new double[] {held[0], held[2], held[4]})
                .containsExactly(new double[] {7.3692, 106.0915, 128.4293}, within(PRINTED));
        double[] lifting = torques(profile, Joint.KNEE, Phase.LIFTING);
        assertThat(lifting[1]).isCloseTo(70.0289, within(PRINTED));
        assertThat(lifting[3]).isCloseTo(121.4435, within(PRINTED));
    }

    @Test
    void fElbowFlexionOnACable() {
        StackLine line = new StackLine(1, 0.05, Loaded.always(20), 0);
        Cable cable = new Cable("cable", new BodyPoint("hand", 0, new Vec(0.33, 0)), new Vec(0.8, -1.0), line);
        ExerciseProfile profile = profile(ELBOW, 15, 125, cable);
        assertThat(threeOf(profile, Phase.HELD))
                .containsExactly(new double[] {-32.9130, 45.3665, 65.9999}, within(PRINTED));
        assertThat(threeOf(profile, Phase.LIFTING))
                .containsExactly(new double[] {-31.2284, 52.0640, 69.1767}, within(PRINTED));
        assertThat(threeOf(profile, Phase.LOWERING))
                .containsExactly(new double[] {-34.5975, 47.3747, 62.8231}, within(PRINTED));
    }

    private static double[] threeOf(ExerciseProfile profile, Phase phase) {
        double[] all = torques(profile, Joint.ELBOW, phase);
        return new double[] {all[0], all[2], all[4]};
    }

    /** Two legs that share equally, a bar of 80 kg behind the trunk. */
    private static ExerciseProfile squat(int positions) {
        double trunk = Examples.body().side().trunk().orElseThrow().length();
        DeadWeight bar = new DeadWeight("bar", new BodyPoint("shoulders", 2, new Vec(trunk, 0.04)), Loaded.with(20));
        BalancedStand stand = new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.35)), 0.5);
        WorkingRange range = new WorkingRange(Angles.radians(100), Angles.radians(15), Angles.radians(100));
        Exercise exercise = new Exercise(stand, List.of(bar), 1);
        return ExerciseProfile.of(new ExerciseTask(Examples.both(range), exercise, 60, Examples.tempo(), positions));
    }

    @Test
    void gSquatHeld() {
        ExerciseProfile profile = squat(3);
        assertThat(torques(profile, Joint.HIP, Phase.HELD))
                .containsExactly(new double[] {137.4609, 122.1220, 72.6038}, within(7e-5));
        assertThat(torques(profile, Joint.KNEE, Phase.HELD))
                .containsExactly(new double[] {135.5960, 60.7667, -21.5814}, within(7e-5));
        assertThat(torques(profile, Joint.ANKLE, Phase.HELD))
                .containsExactly(new double[] {51.4149, 51.4149, 51.4149}, within(PRINTED));
        GroundContact foot = profile.limbs().get(0).ground().orElseThrow().at(Phase.HELD, 1);
        assertThat(2 * foot.upward()).isCloseTo(1569.0640, within(PRINTED));
        assertThat(foot.fraction()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void gSquatLifting() {
        ExerciseProfile profile = squat(5);
        ExerciseLimb limb = profile.limbs().get(1);
        assertThat(limb.torque(Joint.HIP, Phase.LIFTING, 1)).isCloseTo(140.7270, within(7.1e-5));
        assertThat(limb.torque(Joint.KNEE, Phase.LIFTING, 1)).isCloseTo(101.2863, within(PRINTED));
        assertThat(limb.torque(Joint.ANKLE, Phase.LIFTING, 1)).isCloseTo(53.8025, within(PRINTED));
        GroundContact foot = limb.ground().orElseThrow().at(Phase.LIFTING, 1);
        assertThat(2 * foot.upward()).isCloseTo(1612.0047, within(8.1e-4));
        assertThat(foot.fraction()).isCloseTo(0.504477, within(5.1e-7));
    }

    @Test
    void hBenchPress() {
        StraightPath path = new StraightPath(
                new Reach.Hand(Optional.empty()), Angles.radians(180), new Vec(0.10, 0.30), new Vec(0.04, 0.55));
        double wrist = Examples.body().arm().forearm().length();
        DeadWeight bar = new DeadWeight("bar", new BodyPoint("wrist", 1, new Vec(wrist, 0)), Loaded.with(20));
        WorkingRange range = new WorkingRange(0, Math.hypot(0.06, 0.25), 0);
        Exercise exercise = new Exercise(path, List.of(bar), 1);
        ExerciseProfile profile =
                ExerciseProfile.of(new ExerciseTask(Examples.both(range), exercise, 40, Examples.tempo(), 3));
        assertThat(torques(profile, Joint.SHOULDER, Phase.HELD))
                .containsExactly(new double[] {35.0536, 24.9206, 13.9437}, within(PRINTED));
        assertThat(torques(profile, Joint.ELBOW, Phase.HELD))
                .containsExactly(new double[] {-59.9075, -49.7148, -22.3841}, within(6e-5));
    }

    /** Example C's line, hooked on a foot that goes straight along the rail's direction instead of on the plate. */
    @Test
    void cALineOnAFootThatGoesStraight() {
        double sole = Examples.leg().foot().ankleHeight();
        BodyPoint hook = new BodyPoint("hook", 2, new Vec(0.20 - 0.05, -sole));
        Rubber rubber = new Rubber("example C", 0.60, new LinearLaw(150 * 0.60), new LossFraction(0), 1.5, 0, 0);
        FixedPoint anchor = new FixedPoint("anchor", new Vec(1.60, 0.30), 0, Double.POSITIVE_INFINITY);
        StretchLine line =
                new StretchLine("line", rubber, ElasticLine.Pieces.one(), 0.10, anchor, new OnBody(hook, 0), List.of());
        StretchSeries lower = line.over(foot(0.605522, 0.777139));
        StretchSeries upper = line.over(foot(0.777139, 0.854519));
        assertThat(lower.rubberLength(0)).isCloseTo(0.831611, within(1e-6));
        assertThat(lower.rubberLength(2)).isCloseTo(0.661209, within(1e-6));
        assertThat(upper.rubberLength(2)).isCloseTo(0.584574, within(1e-6));
        // 150 N/m × half a unit of the last digit of the printed places
        assertThat(lower.tension(Phase.HELD, 0)).isCloseTo(34.7416, within(1.5e-4));
        assertThat(lower.tension(Phase.HELD, 2)).isCloseTo(9.1813, within(1.5e-4));
        assertThat(upper.tension(Phase.HELD, 2)).isZero();
    }

    /** Example B's foot square to the way, its ankle led from one place to another. */
    private static ChainPath foot(double from, double to) {
        StraightPath way =
                new StraightPath(new Reach.FlatFoot(Math.PI / 2), Math.PI / 2, new Vec(from, 0.05), new Vec(to, 0.05));
        Course course = Course.even(to - from, 3, Examples.tempo());
        WorkingRange range = new WorkingRange(0, to - from, 0);
        return way.path(new Motion.Moving(Examples.body().side(), 1, range, course, List.of()));
    }
}
