package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
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

    /** A force whose positions are a joint's anatomical angle; its line of action is still to be said. */
    static MeasuredRun byAngle(ChainPath path, BodyPoint at, Joint joint) {
        return new MeasuredRun(path, at, "rad", 1).countAngle(path, joint);
    }

    /** A force whose positions are travel, from {@code start} at the bottom; its line of action is still to be said. */
    static MeasuredRun byTravel(ChainPath path, BodyPoint at, double start) {
        return new MeasuredRun(path, at, "m", 1).countTravel(path, start);
    }

    /** Says that it acts along the tangent of its point's track, against the motion toward the top. */
    MeasuredRun againstMotion(ChainPath path) {
        PointTrack track = path.track(at);
        for (int i = 0; i < way.length; i++) {
            Vec slope = track.slope(i);
            way[i] = moving(slope.norm(), at.name());
            waySlope[i] = slope.dot(track.curve(i)) / way[i];
            against[i] = new double[] {-slope.x() / way[i], -slope.y() / way[i]};
        }
        return this;
    }

    /** A torque on the segment after a joint, against its turning toward the top; positions are the joint's angle. */
    static MeasuredRun againstTurning(ChainPath path, Joint joint) {
        int segment = segment(path, joint);
        double sense = Math.signum(path.slope(segment, 0));
        BodyPoint at = new BodyPoint(joint.words(), segment, new Vec(0, 0));
        // a couple counts counter-clockwise; this one turns against the segment
        MeasuredRun run = new MeasuredRun(path, at, "rad", -sense).countAngle(path, joint);
        for (int i = 0; i < run.way.length; i++) {
            run.way[i] = moving(sense * path.slope(segment, i), "segment after the " + joint.words());
            run.waySlope[i] = sense * path.curve(segment, i);
        }
        return run;
    }

    private static int segment(ChainPath path, Joint joint) {
        if (!path.joints().contains(joint)) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "joint that the machine was measured by",
                    Double.NaN,
                    Double.NaN,
                    "",
                    "the machine was measured by the " + joint.words() + ", which is not part of this movement");
        }
        return path.index(joint);
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
        int k = segment(path, joint);
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
