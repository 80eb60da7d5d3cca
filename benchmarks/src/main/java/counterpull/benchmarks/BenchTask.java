package counterpull.benchmarks;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Leg;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
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
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.List;

/** What is timed: two different legs with published strength, a 45° sled, a matched pair of tubes, 101 positions. */
final class BenchTask {
    private BenchTask() {}

    static Leg leg(double stature) {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, stature, 80, MeasuredLengths.none()).leg();
    }

    static PressTask task() {
        Rail rail = new Rail(Math.toRadians(45), Ride.PLATE, 0, 1);
        Carriage carriage = new Carriage(40, Counterweight.none(), new Friction(15, 0.02, 0), 400);
        SeatSetting seat = new SeatSetting("only", 1, 1, 0, Math.toRadians(135));
        return new PressTask(
                new Person(80, List.of(limb(Side.LEFT, 1.75, 0.48), limb(Side.RIGHT, 1.74, 0.52))),
                new Sled(rail, carriage, new Stops()),
                new Stance(seat, new FootRow("row", 0), 0.5, new Vec(0, 0)),
                Pushing.straight(),
                new FullStop(new Tempo.Seconds(2, 0, 2, 0)),
                new Loading(60, List.of(line())),
                PressTask.USUAL_POSITIONS);
    }

    private static Limb limb(Side side, double stature, double share) {
        WorkingRange range = new WorkingRange(Math.toRadians(90), Math.toRadians(10), Math.toRadians(100));
        LimbStrength strength = LimbStrength.published(new Physique(Sex.MALE, 35, 80, 1.75));
        return new Limb(side, leg(stature), share, range, JointRanges.open(), strength);
    }

    private static ElasticLine line() {
        Rubber rubber =
                new Rubber("tube", 0.60, new MooneyRivlin(6e-5, 1.2e5, 0.8e5), new LossFraction(0.1), 1.5, 0, 0);
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("upper", new Vec(1.60, 0.30), 0, Double.POSITIVE_INFINITY),
                new Attachment("plate", new Vec(0, 0.20), 0));
        return new ElasticLine(rubber, ElasticLine.Pieces.one(), 0.10, ends);
    }
}
