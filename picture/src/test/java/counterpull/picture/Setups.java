package counterpull.picture;

import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.choice.Caps;
import counterpull.engine.choice.EffortTarget;
import counterpull.engine.choice.Goal;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Stops;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.List;

/** Invented setups to draw: the design's worked examples B and C with published strength, and some awkward ones. */
final class Setups {
    static final Anthropometry BODY = body(MeasuredLengths.none());

    private Setups() {}

    static Anthropometry body(MeasuredLengths measured) {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, measured);
    }

    static Limb limb(Side side, MeasuredLengths measured) {
        WorkingRange range = new WorkingRange(Angles.radians(90), Angles.radians(10), Angles.radians(100));
        LimbStrength strength = LimbStrength.published(new Physique(Sex.MALE, 35, 80, 1.75));
        return new Limb(side, body(measured).leg(), 0.5, range, JointRanges.open(), strength);
    }

    static Person person() {
        return new Person(
                80, List.of(limb(Side.LEFT, MeasuredLengths.none()), limb(Side.RIGHT, MeasuredLengths.none())));
    }

    static Person unequal() {
        MeasuredLengths longer =
                MeasuredLengths.none().with(BodyLength.THIGH, 0.455).with(BodyLength.SHANK, 0.425);
        return new Person(80, List.of(limb(Side.LEFT, longer), limb(Side.RIGHT, MeasuredLengths.none())));
    }

    static Stance stance(double trunkDegrees) {
        SeatSetting seat = new SeatSetting("only", 1, 1, 0, Angles.radians(trunkDegrees));
        double heel = 0.05 - BODY.leg().foot().ankleFromHeel();
        return new Stance(seat, new FootRow("example", heel), 0.5, new Vec(0, 0));
    }

    static Sled sled(double degrees, Ride ride, double... stops) {
        Rail rail = new Rail(Angles.radians(degrees), ride, 0, 1);
        Carriage carriage = new Carriage(40, Counterweight.none(), new Friction(15, 0.02, 0), 400);
        return new Sled(rail, carriage, new Stops(stops));
    }

    static Tempo tempo() {
        return new FullStop(new Tempo.Seconds(2, 0, 2, 0));
    }

    static PressTask press(Person person, Sled sled, Stance stance, Loading loading) {
        return new PressTask(person, sled, stance, Pushing.straight(), tempo(), loading, 101);
    }

    /** Worked example B. */
    static PressProfile plain() {
        return PressProfile.of(press(person(), sled(45, Ride.PLATE), stance(135), Loading.plates(60)));
    }

    /** Worked example C. */
    static PressProfile relieved() {
        return PressProfile.of(press(person(), sled(45, Ride.PLATE), stance(135), new Loading(60, List.of(upper(1)))));
    }

    static ElasticLine upper(int strands) {
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("upper", new Vec(1.60, 0.30), 0, Double.POSITIVE_INFINITY),
                new Attachment("plate", new Vec(0, 0.20), 0));
        return new ElasticLine(rubber("tube 7"), pieces(strands), 0.10, ends);
    }

    static ElasticLine lower() {
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("foot rail hole 4", new Vec(0.15, -0.22), 0, Double.POSITIVE_INFINITY),
                new Attachment("lower bar", new Vec(0.08, -0.18), 0));
        Rubber rubber = new Rubber("tube 12", 0.40, new LinearLaw(160), new LossFraction(0.1), 1.2, 0, 0);
        return new ElasticLine(rubber, ElasticLine.Pieces.one(), 0.12, ends);
    }

    static ElasticLine.Pieces pieces(int count) {
        ElasticLine.Pieces one = ElasticLine.Pieces.one();
        return new ElasticLine.Pieces(count, one.hang(), one.placement());
    }

    static Rubber rubber(String tag) {
        return new Rubber(tag, 0.60, new LinearLaw(150 * 0.60), new LossFraction(0), 1.5, 0, 0);
    }

    /** A heavy setup with stops, unequal limbs, rubber above and below. */
    static PressProfile both() {
        Loading loading = new Loading(140, List.of(upper(2), lower()));
        return PressProfile.of(press(unequal(), sled(45, Ride.PLATE, 0.60, 0.65, 0.70, 0.75), stance(135), loading));
    }

    static PressProfile shallowRail() {
        Loading loading = new Loading(100, List.of(upper(1)));
        return PressProfile.of(press(person(), sled(20, Ride.PLATE, 0.62, 0.68, 0.74), stance(120), loading));
    }

    /** Worked example B, pushed 8° toward the head. */
    static PressProfile angled() {
        PressTask straight = press(person(), sled(45, Ride.PLATE), stance(135), Loading.plates(60));
        Pushing pushing = new Pushing(new Push.Angled(Angles.radians(8)), Pushing.USUAL_SPREAD);
        return PressProfile.of(new PressTask(
                straight.person(), straight.sled(), straight.stance(), pushing, tempo(), straight.loading(), 101));
    }

    /** One leg of which nothing is known but its length. */
    static PressProfile unknown() {
        return oneLeg(LimbStrength.none());
    }

    /** One leg whose published curves all stand but that of knee flexion. */
    static PressProfile oneActionUnknown() {
        return oneLeg(limb(Side.RIGHT, MeasuredLengths.none()).strength().without(Action.KNEE_FLEXION));
    }

    private static PressProfile oneLeg(LimbStrength strength) {
        Limb known = limb(Side.RIGHT, MeasuredLengths.none());
        Limb limb = new Limb(Side.RIGHT, known.leg(), 1, known.range(), known.ranges(), strength);
        Person person = new Person(80, List.of(limb));
        return PressProfile.of(press(person, sled(45, Ride.PLATE), stance(135), Loading.plates(0)));
    }

    /** The seat rides up a steep rail, the person's head at its upper end. */
    static PressProfile steepSeat() {
        Loading loading = Loading.plates(20);
        return PressProfile.of(press(person(), sled(-60, Ride.SEAT), stance(115), loading));
    }

    /** A level rail. */
    static PressProfile level() {
        Sled sled = sled(0, Ride.PLATE);
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("post behind the seat, third hole from the floor", new Vec(-0.35, -0.18), 0, 2000),
                new Attachment("lower bar", new Vec(0.05, -0.18), 0));
        Rubber rubber = new Rubber(
                "tube 31, bought in spring, kept on the long hook",
                0.60,
                new LinearLaw(300),
                new LossFraction(0),
                2.4,
                0,
                0);
        return PressProfile.of(press(
                person(),
                sled,
                stance(110),
                new Loading(20, List.of(new ElasticLine(rubber, ElasticLine.Pieces.one(), 0.1, ends)))));
    }

    /** A plate turned from square, a soft seat, and a seat setting that lifts the hip. */
    static PressProfile tilted() {
        SeatSetting seat = new SeatSetting("high", 0.9, 1, 0.03, Angles.radians(130));
        Stance stance = new Stance(seat, new FootRow("row 2", 0.02), 0.6, new Vec(-0.012, -0.02));
        Rail rail = new Rail(Angles.radians(45), Ride.PLATE, 0.15, -1);
        Sled sled = new Sled(rail, sled(45, Ride.PLATE).carriage(), new Stops());
        return PressProfile.of(press(person(), sled, stance, Loading.plates(50)));
    }

    /** The seat rides up a rail whose lower end is the plate. */
    static PressProfile seatRides() {
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("plate post", new Vec(0.02, -0.20), 0, Double.POSITIVE_INFINITY),
                new Attachment("seat hook", new Vec(0.10, -0.22), 0));
        ElasticLine line = new ElasticLine(rubber("tube 7"), ElasticLine.Pieces.one(), 0.05, ends);
        Loading loading = new Loading(30, List.of(line));
        return PressProfile.of(press(person(), sled(-20, Ride.SEAT, 0.62, 0.68), stance(150), loading));
    }

    static Goal goal() {
        EffortTarget target = EffortTarget.through(
                new double[] {Angles.radians(10), Angles.radians(50), Angles.radians(90)},
                new double[] {0.5, 0.45, 0.3});
        Caps caps = Caps.none().withKneecapStress(9e6);
        return new Goal(target, 0.7, 200, List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE), caps, Goal.Straying.AS_TOLD);
    }
}
