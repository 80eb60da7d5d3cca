package counterpull.browser;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.HangingChain;
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
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Exercises like the worked examples D to H, with several things that resist at once, for {@link WorkedExample}. */
final class WorkedExercises {
    private static final int POSITIONS = 21;
    private static final LeverFrame FRAME = new LeverFrame(new Vec(0.03, -0.02), RollerPad.against(0, 0.32));

    private WorkedExercises() {}

    static void add(NumberLines lines) {
        Hinge knee = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        lines.add("knee extension", profile(knee, degrees(90, 0), List.of(lever(), cam(), tube())));
        Hinge elbow = new Hinge(Joint.ELBOW, -Math.PI / 2, Map.of(), Hinge.Lie.UPRIGHT);
        lines.add("elbow flexion", profile(elbow, degrees(15, 110), List.of(cable())));
        BalancedStand stand = new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.35)), 0.5);
        lines.add("squat", profile(stand, degrees(100, 15), List.of(bar(), chain())));
        StraightPath path =
                new StraightPath(new Reach.Hand(Optional.empty()), Math.PI, new Vec(0.10, 0.30), new Vec(0.04, 0.55));
        lines.add("bench press", profile(path, new WorkingRange(0, 0.25, 0), List.of(inHand())));
    }

    private static ExerciseProfile profile(Motion motion, WorkingRange range, List<Resistance> resists) {
        Tempo tempo = new FullStop(new Tempo.Seconds(2, 0, 2, 0));
        return ExerciseProfile.of(
                new ExerciseTask(person(range), new Exercise(motion, resists, 1), 0, tempo, POSITIONS));
    }

    private static WorkingRange degrees(double bottom, double top) {
        return new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
    }

    private static Person person(WorkingRange range) {
        BodySide side = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none()).side();
        LimbStrength strength = LimbStrength.published(new Physique(Sex.MALE, 35, 80, 1.75));
        Limb left = new Limb(Side.LEFT, side, 0.5, range, JointRanges.open(), strength);
        Limb right = new Limb(Side.RIGHT, side, 0.5, range, JointRanges.open(), strength);
        return new Person(80, List.of(left, right));
    }

    private static Lever lever() {
        Horn horn = new Horn("horn", 0.40, Angles.radians(10), Loaded.always(25));
        return new Lever("lever", FRAME, new LeverBody(5, 0.22, 0, 0.40), List.of(horn), 2);
    }

    private static CamStack cam() {
        CamRadius radius = new CamRadius(List.of(
                new CamRadius.Reading(-2.2, 0.08),
                new CamRadius.Reading(-0.8, 0.12),
                new CamRadius.Reading(0.5, 0.09)));
        return new CamStack("cam", FRAME, radius, new StackLine(2, 0.05, Loaded.always(30), 1), 0.2);
    }

    private static StretchLine tube() {
        Rubber rubber =
                new Rubber("tube", 0.40, new MooneyRivlin(6e-5, 1.2e5, 0.8e5), new LossFraction(0.1), 1.2, 0, 0);
        FixedPoint behind = new FixedPoint("post", new Vec(-0.1, -0.5), 0, Double.POSITIVE_INFINITY);
        OnBody ankle = new OnBody(new BodyPoint("ankle", 0, new Vec(0.40, 0)), 0);
        return new StretchLine("tube", rubber, ElasticLine.Pieces.one(), 0.05, behind, ankle, List.of());
    }

    private static Cable cable() {
        StackLine line = new StackLine(1, 0.05, Loaded.always(20), 0);
        return new Cable("cable", new BodyPoint("hand", 0, new Vec(0.33, 0)), new Vec(0.8, -1.0), line);
    }

    private static DeadWeight bar() {
        return new DeadWeight("bar", new BodyPoint("shoulders", 2, new Vec(0.504, 0.04)), Loaded.always(60));
    }

    private static HangingChain chain() {
        return new HangingChain("chains", new BodyPoint("shoulders", 2, new Vec(0.504, 0.04)), 10, 1.6, -0.07);
    }

    private static DeadWeight inHand() {
        return new DeadWeight("bar", new BodyPoint("wrist", 1, new Vec(0.2555, 0)), Loaded.always(60));
    }
}
