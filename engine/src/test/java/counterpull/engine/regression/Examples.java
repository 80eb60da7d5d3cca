package counterpull.engine.regression;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Leg;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
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
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.strength.LimbStrength;
import java.util.List;

/** The bodies and machines of the worked examples, so that several tests look at the same ones. */
public final class Examples {
    private Examples() {}

    /** Example B's leg: stature 1.75 m, 80 kg, Dempster/Winter, Drillis and Contini. */
    public static Leg leg() {
        return body().leg();
    }

    /** Example B's person: two equal limbs, knee 90° to 10°. */
    public static Person person() {
        WorkingRange range = new WorkingRange(Angles.radians(90), Angles.radians(10), Angles.radians(100));
        Limb left = new Limb(Side.LEFT, leg(), 0.5, range, JointRanges.open(), LimbStrength.none());
        Limb right = new Limb(Side.RIGHT, leg(), 0.5, range, JointRanges.open(), LimbStrength.none());
        return new Person(80, List.of(left, right));
    }

    /** Example B's body: stature 1.75 m, 80 kg, Dempster/Winter, Drillis and Contini. */
    public static Anthropometry body() {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
    }

    /** Example B's person with one limb at work, over a range of its driving coordinate. */
    public static Person alone(WorkingRange range) {
        return new Person(80, List.of(limb(Side.LEFT, 1, range)));
    }

    /** Example B's person with both limbs at work, sharing equally. */
    public static Person both(WorkingRange range) {
        return new Person(80, List.of(limb(Side.LEFT, 0.5, range), limb(Side.RIGHT, 0.5, range)));
    }

    private static Limb limb(Side side, double share, WorkingRange range) {
        return new Limb(side, body().side(), share, range, JointRanges.open(), LimbStrength.none());
    }

    /** Example B's sled: 45°, carriage 40 kg, f₀ 15 N, μ 0.02. */
    public static Sled sled(Friction friction) {
        Rail rail = new Rail(Angles.radians(45), Ride.PLATE, 0, 1);
        return new Sled(rail, new Carriage(40, Counterweight.none(), friction, 400), new Stops());
    }

    /** Example B's friction. */
    public static Friction friction() {
        return new Friction(15, 0.02, 0);
    }

    /** Hip on the sled's reference line, tape origin at the hip, trunk at 135°, ankle at row 0.05 m. */
    public static Stance stance() {
        SeatSetting seat = new SeatSetting("only", 1, 1, 0, Angles.radians(135));
        double heel = 0.05 - leg().foot().ankleFromHeel();
        return new Stance(seat, new FootRow("example", heel), 0.5, new Vec(0, 0));
    }

    /** 2 s down, 2 s up, full stops. */
    public static Tempo tempo() {
        return new FullStop(new Tempo.Seconds(2, 0, 2, 0));
    }

    /** Example B. */
    public static PressTask rail(Friction friction, Loading loading, int positions) {
        return new PressTask(person(), sled(friction), stance(), Pushing.straight(), tempo(), loading, positions);
    }
}
