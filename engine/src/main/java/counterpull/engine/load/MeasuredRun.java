package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import java.util.List;

/**
 * How a limb runs a measured machine over a range, by position: the machine's position, the way made per unit of the stroke's coordinate
 * x (m or rad, above zero), their slopes by x, and the line of action. Read-only once made.
 */
public final class MeasuredRun {
    private static final double STANDS_STILL = 1e-9;
    final String unit;
    final double[] position;
    final double[] positionSlope;
    final double[] way;
    final double[] waySlope;
    private final BodyPoint at;
    private final double[][] against;
    final double sign;

    private MeasuredRun(ChainPath path, BodyPoint at, String unit, double sign) {
        this.at = at;
        this.unit = unit;
        this.sign = sign;
        position = new double[path.positions()];
        positionSlope = new double[path.positions()];
        way = new double[path.positions()];
        waySlope = new double[path.positions()];
        against = new double[path.positions()][];
    }

    static MeasuredRun force(ChainPath path, BodyPoint at, MeasuredProfile.Position counted) {
        MeasuredRun run = counted instanceof MeasuredProfile.Travel travel
                ? new MeasuredRun(path, at, "m", 1).countTravel(path, travel.start())
                : new MeasuredRun(path, at, "rad", 1).countAngle(path, ((MeasuredProfile.Angle) counted).joint());
        PointTrack track = path.track(at);
        for (int i = 0; i < run.way.length; i++) {
            double speed = moving(track.slope(i).norm(), at.name());
            run.way[i] = speed;
            run.waySlope[i] = track.slope(i).dot(track.curve(i)) / speed;
            run.against[i] =
                    new double[] {-track.slope(i).x() / speed, -track.slope(i).y() / speed};
        }
        return run;
    }

    static MeasuredRun torque(ChainPath path, Joint joint) {
        int segment = path.index(joint);
        double sense = Math.signum(path.slope(segment, 0));
        BodyPoint at = new BodyPoint(joint.words(), segment, new counterpull.engine.planar.Vec(0, 0));
        // a couple counts counter-clockwise; this one turns against the segment
        MeasuredRun run = new MeasuredRun(path, at, "rad", -sense).countAngle(path, joint);
        for (int i = 0; i < run.way.length; i++) {
            run.way[i] = moving(sense * path.slope(segment, i), "segment after the " + joint.words());
            run.waySlope[i] = sense * path.curve(segment, i);
        }
        return run;
    }

    private static double moving(double way, String what) {
        if (way < STANDS_STILL) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "way of the " + what + " per unit of the stroke",
                    way,
                    STANDS_STILL,
                    "",
                    "the " + what
                            + " stands still or turns back inside the range, so the machine has no direction there: shorten "
                            + "the range");
        }
        return way;
    }

    private MeasuredRun countTravel(ChainPath path, double start) {
        for (int i = 0; i < position.length; i++) {
            position[i] = start + path.course().at(i);
            positionSlope[i] = 1;
        }
        return this;
    }

    private MeasuredRun countAngle(ChainPath path, Joint joint) {
        int k = path.index(joint);
        for (int i = 0; i < position.length; i++) {
            position[i] = path.angle(joint, i);
            double before = k == 0 ? 0 : path.slope(k - 1, i);
            positionSlope[i] = path.senses().get(k).angleSign() * (path.slope(k, i) - before);
        }
        return this;
    }

    /** The pull along this run's line of action. */
    Pull pull(String words, List<Share> shares) {
        return against[0] == null
                ? Pull.couple(words, at, Pull.Holds.BOTH_WAYS, shares)
                : Pull.force(words, at, against, Pull.Holds.ONE_WAY, shares);
    }
}
