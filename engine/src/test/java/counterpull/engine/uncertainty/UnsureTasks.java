package counterpull.engine.uncertainty;

import counterpull.engine.body.Action;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Stops;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import counterpull.engine.strength.Prior;
import counterpull.engine.strength.SpeedLaw;
import java.util.List;
import java.util.Map;

/** Tasks whose uncertainty the tests look at. */
final class UnsureTasks {
    static final Looked KNEE = new Looked(List.of(Joint.KNEE), 0.6);

    private UnsureTasks() {}

    /** Example B's sled and legs with published strength, its knee extension tested at 60°, one tube, 21 positions. */
    static PressTask press() {
        LimbStrength strength = LimbStrength.published(new Physique(Sex.MALE, 35, 80, 1.75));
        Prior knee = Prior.of(Action.KNEE_EXTENSION, new Physique(Sex.MALE, 35, 80, 1.75))
                .orElseThrow();
        double angle = Math.toRadians(60);
        IsometricTest test = new IsometricTest(angle, 1.1 * knee.held(angle), 0.08);
        strength = strength.with(Action.KNEE_EXTENSION, BentCurve.of(knee, List.of(test)));
        Rubber rubber = new Rubber("T1", 0.60, new MooneyRivlin(6e-5, 1.2e5, 0.8e5), new LossFraction(0.1), 1.5, 0, 0);
        Loading loading = new Loading(60, List.of(Trials.line(rubber, new Vec(1.60, 0.30), new Vec(0, 0.20))));
        return Trials.task(strength).with(loading);
    }

    /** The same on a sled whose bottom stop is caught at the next of two marks. */
    static PressTask onAStop() {
        return Trials.with(press(), new Stops(0.70, 0.75));
    }

    /** The same with strength that is certain and the same everywhere. */
    static PressTask certain() {
        return press().with(Trials.pair(strong(0)));
    }

    /** Strength of so much spread, the same error at every angle. */
    static LimbStrength strong(double logSd) {
        AngleRange every = new AngleRange(-Math.PI, Math.PI);
        LimbStrength strength = LimbStrength.none();
        for (Action action : Action.LEG) {
            strength = strength.with(action, DrawnCurve.flat(200, every, logSd, new SpeedLaw.AnySpeed()));
        }
        return strength;
    }

    /** Knee extension against a measured machine by a leg that weighs nothing: effort = reading / strength. */
    static ExerciseTask product(double logSd) {
        Leg leg = Trials.leg(1.75);
        BodySide light = BodySide.of(leg).limbsHeavier(1e-9);
        WorkingRange range = new WorkingRange(Math.toRadians(90), 0, Math.toRadians(90));
        Limb limb = new Limb(Side.LEFT, light, 1, range, JointRanges.open(), strong(logSd));
        MeasuredProfile machine = new MeasuredProfile(
                "machine",
                new MeasuredProfile.Torque(Joint.KNEE),
                List.of(
                        new MeasuredProfile.Reading(0, 60, 60),
                        new MeasuredProfile.Reading(Math.toRadians(91), 100, 100)));
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        Tempo tempo = new FullStop(new Tempo.Seconds(2, 0, 2, 0));
        return new ExerciseTask(new Person(80, List.of(limb)), new Exercise(hinge, List.of(machine), 1), 0, tempo, 5);
    }
}
