package counterpull.engine.profile;

import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
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
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.SpeedLaw;
import java.util.List;
import java.util.Random;

/** Small inputs that the tests vary one thing of at a time, and seeded random ones. */
public final class Trials {
    private static final AngleRange EVERY_ANGLE = new AngleRange(-Math.PI, Math.PI);

    private Trials() {}

    /** Example B at 21 positions, both limbs with these strengths. */
    public static PressTask task(LimbStrength strength) {
        return with(Examples.rail(Examples.friction(), Loading.plates(60), 21), pair(strength));
    }

    /** Example B at 21 positions with a strength in every action. */
    public static PressTask task() {
        return task(strong(200, 180, 120));
    }

    /** Two equal limbs. */
    public static Person pair(LimbStrength strength) {
        return new Person(
                80,
                List.of(
                        limb(Side.LEFT, Examples.leg(), 0.5, strength),
                        limb(Side.RIGHT, Examples.leg(), 0.5, strength)));
    }

    /** A limb over 90° to 10° of knee flexion without joint limits. */
    public static Limb limb(Side side, Leg leg, double share, LimbStrength strength) {
        return new Limb(side, leg, share, range(90, 10), JointRanges.open(), strength);
    }

    /** A working range, degrees; pain-free to 10° deeper. */
    public static WorkingRange range(double bottom, double top) {
        return new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom + 10));
    }

    /** The leg of a man of this stature. */
    public static Leg leg(double stature) {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, stature, 80, MeasuredLengths.none()).leg();
    }

    /** The same strength at every angle and speed, N·m, in the named actions and half of it in the opposite ones. */
    public static LimbStrength strong(double hip, double knee, double ankle) {
        LimbStrength strength = named(hip, knee, ankle);
        strength = strength.with(Action.HIP_FLEXION, flat(hip / 2));
        strength = strength.with(Action.KNEE_FLEXION, flat(knee / 2));
        return strength.with(Action.ANKLE_DORSIFLEXION, flat(ankle / 2));
    }

    /** The same strength at every angle and speed, N·m, in the named actions alone. */
    public static LimbStrength named(double hip, double knee, double ankle) {
        return LimbStrength.none()
                .with(Action.HIP_EXTENSION, flat(hip))
                .with(Action.KNEE_EXTENSION, flat(knee))
                .with(Action.ANKLE_PLANTARFLEXION, flat(ankle));
    }

    /** One torque at every angle and speed. */
    public static DrawnCurve flat(double torque) {
        return DrawnCurve.flat(torque, EVERY_ANGLE, 0.1, new SpeedLaw.AnySpeed());
    }

    /** One torque between two angles, degrees; not known outside. */
    public static DrawnCurve between(double torque, double low, double high) {
        AngleRange range = new AngleRange(Angles.radians(low), Angles.radians(high));
        return DrawnCurve.flat(torque, range, 0.1, new SpeedLaw.AnySpeed());
    }

    public static PressTask with(PressTask task, Person person) {
        return new PressTask(
                person, task.sled(), task.stance(), task.pushing(), task.tempo(), task.loading(), task.positions());
    }

    public static PressTask with(PressTask task, Sled sled) {
        return new PressTask(
                task.person(), sled, task.stance(), task.pushing(), task.tempo(), task.loading(), task.positions());
    }

    public static PressTask with(PressTask task, Pushing pushing) {
        return new PressTask(
                task.person(), task.sled(), task.stance(), pushing, task.tempo(), task.loading(), task.positions());
    }

    public static PressTask with(PressTask task, Tempo tempo) {
        return new PressTask(
                task.person(), task.sled(), task.stance(), task.pushing(), tempo, task.loading(), task.positions());
    }

    public static PressTask with(PressTask task, int positions) {
        return new PressTask(
                task.person(), task.sled(), task.stance(), task.pushing(), task.tempo(), task.loading(), positions);
    }

    public static PressTask with(PressTask task, Stops stops) {
        return with(task, new Sled(task.sled().rail(), task.sled().carriage(), stops));
    }

    /** A linear rubber: natural length m, stiffness N/m of the piece, tested to three times its length. */
    public static Rubber rubber(String tag, double length, double stiffness) {
        return rubber(tag, length, stiffness, 0);
    }

    public static Rubber rubber(String tag, double length, double stiffness, double loss) {
        return new Rubber(
                tag, length, LinearLaw.ofStiffness(stiffness, length), new LossFraction(loss), 3 * length, 0, 0);
    }

    /** One centred piece between two places along the rail and across it, without dead length. */
    public static ElasticLine line(Rubber rubber, Vec anchor, Vec attachment) {
        return new ElasticLine(rubber, ElasticLine.Pieces.one(), 0, ends(anchor, attachment));
    }

    public static ElasticLine.Ends ends(Vec anchor, Vec attachment) {
        return new ElasticLine.Ends(
                new Anchor("anchor", anchor, 0, Double.POSITIVE_INFINITY), new Attachment("attachment", attachment, 0));
    }

    /** A task with everything drawn at random: both kinds of ride, one or two limbs, lines, tilt, shift and push. */
    public static PressTask random(Random random) {
        Ride ride = random.nextBoolean() ? Ride.PLATE : Ride.SEAT;
        double steep = Angles.radians(20 + 40 * random.nextDouble());
        Rail rail = new Rail(ride == Ride.PLATE ? steep : -steep, ride, 0.2 * random.nextGaussian() / 2, 1);
        Friction friction = new Friction(20 * random.nextDouble(), 0.05 * random.nextDouble(), 0);
        Counterweight.Run run = random.nextBoolean() ? Counterweight.Run.HANGING : Counterweight.Run.ALONG_RAIL;
        Carriage carriage = new Carriage(
                30 + 20 * random.nextDouble(), new Counterweight(5 * random.nextDouble(), run), friction, 400);
        SeatSetting seat = new SeatSetting("seat", 1, 1.1, 0.03 * random.nextGaussian(), Angles.radians(135) * 1);
        Stance stance = new Stance(
                seat,
                new FootRow("row", 0.05 * random.nextGaussian()),
                0.3 + 0.4 * random.nextDouble(),
                new Vec(0.02 * random.nextGaussian(), 0.02 * random.nextGaussian()));
        Loading loading = new Loading(40 + 60 * random.nextDouble(), randomLines(random, ride));
        Tempo tempo = new FullStop(new Tempo.Seconds(1.5 + random.nextDouble(), 0, 1.5 + random.nextDouble(), 0));
        return new PressTask(
                randomPerson(random),
                new Sled(rail, carriage, new Stops()),
                stance,
                randomPush(random),
                tempo,
                loading,
                7);
    }

    private static List<ElasticLine> randomLines(Random random, Ride ride) {
        // from the tape's origin where the plate rides, from the plate where the seat does
        double far = ride == Ride.PLATE ? 1.5 : 0.3;
        double near = ride == Ride.PLATE ? -0.2 : -1.9;
        Rubber rubber = rubber("r", 0.5 + 0.2 * random.nextDouble(), 40, 0.1 * random.nextDouble());
        ElasticLine.Pieces pieces = new ElasticLine.Pieces(2, Hang.SINGLE, Placement.MATCHED_PAIR);
        Anchor anchor = new Anchor("side", new Vec(far, 0.2 * random.nextDouble()), 0.3, 5000);
        ElasticLine pair = new ElasticLine(
                rubber, pieces, 0.1, new ElasticLine.Ends(anchor, new Attachment("edge", new Vec(0, 0.1), 0.2)));
        ElasticLine low = line(rubber("s", 0.45, 30, 0.05), new Vec(near, -0.2), new Vec(0, -0.1));
        return random.nextBoolean() ? List.of(pair) : List.of(pair, low);
    }

    private static Person randomPerson(Random random) {
        LimbStrength strength = strong(150 + 100 * random.nextDouble(), 150, 100);
        if (random.nextInt(3) == 0) {
            return new Person(80, List.of(limb(Side.RIGHT, leg(1.6 + 0.2 * random.nextDouble()), 1, strength)));
        }
        double share = 0.3 + 0.4 * random.nextDouble();
        return new Person(
                80,
                List.of(
                        limb(Side.LEFT, leg(1.70 + 0.04 * random.nextDouble()), share, strength),
                        limb(Side.RIGHT, leg(1.70), 1 - share, strong(140, 170, 90))));
    }

    private static Pushing randomPush(Random random) {
        int which = random.nextInt(3);
        Push push = which == 0
                ? new Push.Angled(Angles.radians(20 * random.nextDouble() - 10))
                : which == 1
                        ? new Push.Through(Push.BodyPoint.HIP)
                        : new Push.LeastEffort(Angles.radians(-20), Angles.radians(15));
        return new Pushing(push, Pushing.USUAL_SPREAD);
    }

    /** Every joint, phase, position and limb of a profile. */
    public static void everywhere(PressProfile profile, Visit visit) {
        for (int k = 0; k < profile.limbs().size(); k++) {
            for (Joint joint : Joint.LEG) {
                for (counterpull.engine.motion.Phase phase : counterpull.engine.motion.Phase.values()) {
                    for (int i = 0; i < profile.positions(); i++) {
                        visit.at(profile.limbs().get(k), joint, phase, i);
                    }
                }
            }
        }
    }

    /** What to do at one place. */
    public interface Visit {
        void at(PressLimb limb, Joint joint, counterpull.engine.motion.Phase phase, int position);
    }
}
