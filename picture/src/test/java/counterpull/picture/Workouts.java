package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Guide;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.StackLine;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ElbowSide;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invented exercises to draw: every movement, and everything that resists. */
final class Workouts {
    private static final int POSITIONS = 61;
    private static final double SHOULDER_OVER_FLOOR = 0.45;

    private Workouts() {}

    private static double rad(double degrees) {
        return Angles.radians(degrees);
    }

    /** A range in degrees. */
    private static WorkingRange degrees(double bottom, double top) {
        return new WorkingRange(rad(bottom), rad(top), rad(bottom));
    }

    private static WorkingRange metres(double bottom, double top) {
        return new WorkingRange(bottom, top, bottom);
    }

    private static Limb limb(Side side, double share, WorkingRange range) {
        Limb known = Setups.limb(side, MeasuredLengths.none());
        return new Limb(side, Setups.BODY.side(), share, range, JointRanges.open(), known.strength());
    }

    private static ExerciseProfile one(Side side, WorkingRange range, Motion motion, Resistance... resists) {
        return done(new Person(80, List.of(limb(side, 1, range))), motion, resists);
    }

    private static ExerciseProfile both(WorkingRange range, Motion motion, Resistance... resists) {
        Person person = new Person(80, List.of(limb(Side.LEFT, 0.5, range), limb(Side.RIGHT, 0.5, range)));
        return done(person, motion, resists);
    }

    private static ExerciseProfile done(Person person, Motion motion, Resistance... resists) {
        Exercise exercise = new Exercise(motion, List.of(resists), 1);
        double plates = exercise.takesPlates() ? 8 : 0;
        return ExerciseProfile.of(new ExerciseTask(person, exercise, plates, Setups.tempo(), POSITIONS));
    }

    private static Motion hinge(Joint joint, double degrees) {
        return new Hinge(joint, rad(degrees), Map.of(), Hinge.Lie.UPRIGHT);
    }

    private static BodyPoint shank(double along) {
        return new BodyPoint("ankle cuff", 0, new Vec(along, 0));
    }

    private static BodyPoint hand(int segment) {
        return new BodyPoint("hand", segment, new Vec(0.30, 0));
    }

    private static StackLine stack(double kilograms) {
        return new StackLine(2, 0.05, Loaded.always(kilograms), 0);
    }

    private static StretchLine tubing(String name, LineEndPair ends) {
        Rubber rubber = new Rubber(name, 0.45, new LinearLaw(60), new LossFraction(0.1), 3, 0, 0);
        return new StretchLine(name, rubber, ElasticLine.Pieces.one(), 0.15, ends.from, ends.to, List.of());
    }

    private record LineEndPair(counterpull.engine.load.LineEnd from, counterpull.engine.load.LineEnd to) {}

    private static FixedPoint post(double x, double y) {
        return new FixedPoint("post", new Vec(x, y), 0, Double.POSITIVE_INFINITY);
    }

    static ExerciseProfile cuff() {
        return one(
                Side.LEFT, degrees(90, 5), hinge(Joint.KNEE, 0), new DeadWeight("cuff", shank(0.35), Loaded.with(0)));
    }

    static ExerciseProfile leverExtension() {
        LeverFrame frame = new LeverFrame(new Vec(0.02, -0.015), RollerPad.against(0, 0.33));
        Horn horn = new Horn("plates", 0.28, rad(20), Loaded.with(0));
        Horn counter = new Horn("counterweight", 0.15, rad(180), Loaded.always(4));
        Lever lever = new Lever("lever", frame, new LeverBody(5, 0.2, 0, 0.4), List.of(horn, counter), 1);
        StretchLine tube =
                tubing("tube 12", new LineEndPair(post(-0.35, -0.55), new OnLever("peg", frame, 0.25, 0, 0)));
        return one(Side.LEFT, degrees(95, 10), hinge(Joint.KNEE, 0), lever, tube);
    }

    static ExerciseProfile camCurl() {
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.36));
        CamRadius cam = new CamRadius(List.of(
                new CamRadius.Reading(rad(60), 0.08),
                new CamRadius.Reading(rad(110), 0.13),
                new CamRadius.Reading(rad(175), 0.10)));
        CamStack stack = new CamStack("curl machine", frame, cam, new StackLine(1, 0.08, Loaded.always(15), 0), 0.1);
        return one(Side.LEFT, degrees(10, 105), hinge(Joint.KNEE, 180), stack);
    }

    static ExerciseProfile abduction() {
        BodyPoint ankle = new BodyPoint("ankle", 0, new Vec(0.78, 0));
        return one(
                Side.RIGHT,
                degrees(0, 40),
                hinge(Joint.HIP_SIDEWAYS, 90),
                new Cable("low cable", ankle, new Vec(-0.75, -0.70), stack(10)));
    }

    static ExerciseProfile straightLegRaise() {
        return one(
                Side.LEFT,
                degrees(5, 70),
                hinge(Joint.HIP, 180),
                new DeadWeight("cuff", new BodyPoint("ankle", 1, new Vec(0.38, 0)), Loaded.always(3)));
    }

    static ExerciseProfile toes() {
        BodyPoint ball = new BodyPoint("ball of the foot", 0, new Vec(0.13, -0.06));
        return one(
                Side.LEFT,
                degrees(15, -30),
                hinge(Joint.ANKLE, 0),
                tubing("tube 7", new LineEndPair(post(-0.50, 0.15), new OnBody(ball, 0))));
    }

    static ExerciseProfile curl() {
        return one(
                Side.LEFT,
                degrees(10, 135),
                hinge(Joint.ELBOW, -90),
                new DeadWeight("dumbbell", hand(0), Loaded.with(0)));
    }

    static ExerciseProfile slantedCurl() {
        MeasuredProfile machine = new MeasuredProfile(
                "curl machine, 4th pin",
                new MeasuredProfile.Torque(Joint.ELBOW),
                List.of(
                        new MeasuredProfile.Reading(rad(0), 24, 20),
                        new MeasuredProfile.Reading(rad(70), 32, 27),
                        new MeasuredProfile.Reading(rad(140), 22, 18)));
        return one(Side.LEFT, degrees(20, 125), hinge(Joint.ELBOW, -40), machine);
    }

    static ExerciseProfile sideRaise() {
        return one(
                Side.LEFT,
                degrees(5, 90),
                hinge(Joint.SHOULDER_SIDEWAYS, 90),
                new DeadWeight("dumbbell", hand(1), Loaded.always(5)));
    }

    static ExerciseProfile turning(Side side) {
        Motion motion = new Hinge(Joint.SHOULDER_TURNING, rad(90), Map.of(), Hinge.Lie.LEVEL);
        return one(
                side,
                degrees(-40, 45),
                motion,
                tubing("tube 3", new LineEndPair(post(-0.55, 0.25), new OnBody(hand(0), 0))));
    }

    /** Lying on the side: the forearm turns in an upright plane. */
    static ExerciseProfile turningOnTheSide() {
        return one(
                Side.LEFT,
                degrees(-45, 40),
                hinge(Joint.SHOULDER_TURNING, 0),
                new DeadWeight("dumbbell", hand(0), Loaded.always(2)));
    }

    static ExerciseProfile benchPress() {
        Motion motion =
                new StraightPath(new Reach.Hand(Optional.empty()), rad(180), new Vec(0.02, 0.12), new Vec(0.02, 0.5));
        double floor = -SHOULDER_OVER_FLOOR;
        return both(
                metres(0, 0.38),
                motion,
                new DeadWeight("bar", wrist(), Loaded.always(40)),
                new HangingChain("chains", wrist(), 9, 1.0, floor));
    }

    private static BodyPoint wrist() {
        return new BodyPoint(
                "wrist",
                1,
                new Vec(Setups.BODY.side().arm().orElseThrow().forearm().length(), 0));
    }

    static ExerciseProfile row() {
        Motion motion =
                new StraightPath(new Reach.Hand(Optional.empty()), rad(90), new Vec(0.50, -0.22), new Vec(0.10, -0.22));
        return both(metres(0.02, 0.34), motion, new Cable("row cable", wrist(), new Vec(1.1, -0.30), stack(40)));
    }

    static ExerciseProfile railPress() {
        Motion motion =
                new StraightPath(new Reach.Hand(Optional.empty()), rad(100), new Vec(0.14, 0.05), new Vec(0.14, 0.48));
        Carriage carriage = new Carriage(20, Counterweight.none(), new Friction(10, 0.02, 0), 200);
        return both(
                metres(0, 0.4), motion, new GuidedMass("bar on rails", wrist(), rad(90), carriage, Loaded.Plates.HERE));
    }

    /** A bar on slanted rails that a tube pulls down over a guide at the floor. */
    static ExerciseProfile slantedRailPress() {
        Motion motion =
                new StraightPath(new Reach.Hand(Optional.empty()), rad(120), new Vec(0.16, 0.10), new Vec(0.08, 0.48));
        Carriage carriage = new Carriage(12, Counterweight.none(), new Friction(5, 0, 0), 200);
        GuidedMass bar = new GuidedMass("bar on rails", wrist(), rad(100), carriage, Loaded.Plates.HERE);
        Rubber rubber = new Rubber("tube 9", 0.60, new LinearLaw(90), new LossFraction(0.1), 3, 0, 0);
        StretchLine tube = new StretchLine(
                "tube 9",
                rubber,
                ElasticLine.Pieces.one(),
                0.3,
                post(0.75, -0.5),
                new OnGuidedMass("hook", new RailFrame(wrist(), rad(100)), new Vec(0.16, 0.05), 0),
                List.of(new Guide("floor pulley", new Vec(0.20, -0.55), 0, 0.05)));
        return both(metres(0, 0.35), motion, bar, tube);
    }

    static ExerciseProfile sidePress() {
        Motion motion = new StraightPath(
                new Reach.HandSideways(Optional.empty(), ElbowSide.TOWARD_HEAD),
                rad(90),
                new Vec(0.25, 0.10),
                new Vec(0.12, 0.48));
        return both(metres(0, 0.38), motion, new DeadWeight("dumbbells", wrist(), Loaded.always(16)));
    }

    static ExerciseProfile squat() {
        BodyPoint bar = new BodyPoint("bar on the back", 2, new Vec(0.44, 0.07));
        return both(
                degrees(105, 10),
                new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.3)), 0.5),
                new DeadWeight("bar", bar, Loaded.always(60)));
    }

    static ExerciseProfile deadlift() {
        double trunk = Setups.BODY.side().trunk().orElseThrow().length();
        BodyPoint shoulder = new BodyPoint("shoulder", 2, new Vec(trunk, 0));
        return both(
                degrees(80, 10),
                new BalancedStand(new StandDrive.Hip(rad(8), 0.3), 0.5),
                new DeadWeight("bar", shoulder, Loaded.always(70)));
    }

    static ExerciseProfile seatedPress() {
        Motion motion =
                new StraightPath(new Reach.FlatFoot(rad(80)), rad(120), new Vec(0.45, 0.05), new Vec(0.82, 0.05));
        BodyPoint sole = new BodyPoint("sole", 2, new Vec(0.06, -0.07));
        MeasuredProfile machine = new MeasuredProfile(
                "press machine, 9th pin",
                new MeasuredProfile.Force(sole, new MeasuredProfile.Travel(0)),
                List.of(
                        new MeasuredProfile.Reading(-0.01, 620, 540),
                        new MeasuredProfile.Reading(0.2, 660, 580),
                        new MeasuredProfile.Reading(0.45, 700, 600)));
        return both(metres(0, 0.33), motion, machine);
    }

    /** All of them by name. */
    static Map<String, ExerciseProfile> all() {
        Map<String, ExerciseProfile> all = new LinkedHashMap<>();
        all.put("knee-cuff", cuff());
        all.put("knee-lever", leverExtension());
        all.put("curl-cam", camCurl());
        all.put("abduction", abduction());
        all.put("leg-raise", straightLegRaise());
        all.put("toes", toes());
        all.put("elbow-curl", curl());
        all.put("elbow-slanted", slantedCurl());
        all.put("side-raise", sideRaise());
        all.put("turning-left", turning(Side.LEFT));
        all.put("turning-right", turning(Side.RIGHT));
        all.put("turning-on-the-side", turningOnTheSide());
        all.put("bench", benchPress());
        all.put("row", row());
        all.put("rail-press", railPress());
        all.put("slanted-rail", slantedRailPress());
        all.put("side-press", sidePress());
        all.put("squat", squat());
        all.put("deadlift", deadlift());
        all.put("seated-press", seatedPress());
        return all;
    }
}
