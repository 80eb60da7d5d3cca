package counterpull.browser;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
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

/**
 * The rail press of the worked examples B and C and the exercises of {@link WorkedExercises}, with published strength, run wherever
 * this class runs: every number of their profiles as a line "name, tab, value". Run as JavaScript and on the JVM, the lines must agree.
 */
public final class WorkedExample {
    private static final int POSITIONS = 41;

    private WorkedExample() {}

    /** Prints every number. */
    public static void main(String[] arguments) {
        for (String line : lines()) {
            System.out.println(line);
        }
    }

    /** Every number: a push straight along the rail, one that takes least effort, the exercises, then how sure the first is. */
    public static List<String> lines() {
        NumberLines lines = new NumberLines();
        lines.add("straight", profile(new Push.Angled(0)));
        lines.add("least effort", profile(new Push.LeastEffort(Angles.radians(-15), Angles.radians(15))));
        WorkedExercises.add(lines);
        WorkedUncertainty.add(lines, task(new Push.Angled(0)));
        return lines.all();
    }

    private static PressProfile profile(Push push) {
        return PressProfile.of(task(push));
    }

    private static PressTask task(Push push) {
        return new PressTask(
                person(),
                sled(),
                stance(),
                new Pushing(push, Pushing.USUAL_SPREAD),
                new FullStop(new Tempo.Seconds(2, 0, 2, 0)),
                new Loading(60, List.of(line())),
                POSITIONS);
    }

    private static Leg leg() {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none()).leg();
    }

    private static Person person() {
        return new Person(80, List.of(limb(Side.LEFT), limb(Side.RIGHT)));
    }

    private static Limb limb(Side side) {
        WorkingRange range = new WorkingRange(Angles.radians(90), Angles.radians(10), Angles.radians(100));
        LimbStrength strength = LimbStrength.published(new Physique(Sex.MALE, 35, 80, 1.75));
        return new Limb(side, leg(), 0.5, range, JointRanges.open(), strength);
    }

    private static Sled sled() {
        Rail rail = new Rail(Angles.radians(45), Ride.PLATE, 0, 1);
        return new Sled(rail, new Carriage(40, Counterweight.none(), new Friction(15, 0.02, 0), 400), new Stops());
    }

    private static Stance stance() {
        SeatSetting seat = new SeatSetting("only", 1, 1, 0, Angles.radians(135));
        double heel = 0.05 - leg().foot().ankleFromHeel();
        return new Stance(seat, new FootRow("example", heel), 0.5, new Vec(0, 0));
    }

    private static ElasticLine line() {
        Rubber rubber = new Rubber("example C", 0.60, new LinearLaw(150 * 0.60), new LossFraction(0.1), 1.5, 0, 0);
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("upper", new Vec(1.60, 0.30), 0, Double.POSITIVE_INFINITY),
                new Attachment("plate", new Vec(0, 0.20), 0));
        return new ElasticLine(rubber, ElasticLine.Pieces.one(), 0.10, ends);
    }
}
