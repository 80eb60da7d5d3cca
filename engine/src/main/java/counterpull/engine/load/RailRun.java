package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A carriage that a limb moves along a straight rail: its place is the point's along <b>u</b>, the rail's direction in the sense in which
 * the point goes toward the top. Force on the body F = −Q against <b>u</b>, Q what something puts on the carriage along <b>u</b>, N.
 * Own axes are the plane's, from where the point is at the bottom of the range. Refused where the point turns back along the rail or does not move
 * along it.
 */
public final class RailRun implements CarrierPath {
    private static final double ROUNDING = 1e-9;
    private static final double SHORTEST = 1e-6;

    private final RailFrame frame;
    private final PointTrack point;
    private final ChainPath path;
    private final Vec toward;

    RailRun(RailFrame frame, ChainPath path) {
        this.frame = frame;
        this.path = path;
        point = path.track(frame.at());
        Vec rail = Vec.unit(frame.railAngle());
        double way = way(rail);
        toward = rail.times(way < 0 ? -1 : 1);
        requireAlong(Math.abs(way));
        for (int i = 0; i < path.positions(); i++) {
            requireOnward(toward.dot(point.slope(i)));
        }
    }

    // of a part that is looked at in one place alone, the way that it is about to go
    private double way(Vec rail) {
        double gone = rail.dot(point.at(path.positions() - 1).minus(point.at(0)));
        return Math.abs(gone) < SHORTEST
                ? rail.dot(point.slope(0)) * path.course().travel()
                : gone;
    }

    // what is moved square to its rail stands still on it, and no force along it says anything
    private void requireAlong(double way) {
        if (way < SHORTEST) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "way of " + frame.at().name() + " along the rail",
                    way,
                    SHORTEST,
                    "m",
                    frame.at().name() + " moves square to the rail and not along it: check the rail's direction");
        }
    }

    private void requireOnward(double along) {
        if (along < -ROUNDING) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "way of " + frame.at().name() + " along the rail per unit of the stroke",
                    along,
                    0,
                    "",
                    frame.at().name()
                            + " turns back along the rail inside the range: shorten the range, or check the rail's "
                            + "direction");
        }
    }

    /** <b>u</b>, the rail's direction toward the top. */
    public Vec toward() {
        return toward;
    }

    @Override
    public PointTrack track(Vec own) {
        PointTrack track = new PointTrack(path.positions());
        Vec start = point.at(0);
        for (int i = 0; i < path.positions(); i++) {
            Vec gone = toward.times(toward.dot(point.at(i).minus(start)));
            track.set(
                    i,
                    start.plus(own).plus(gone),
                    toward.times(toward.dot(point.slope(i))),
                    toward.times(toward.dot(point.curve(i))));
        }
        return track;
    }

    @Override
    public double load(Vec own, Vec force, int i) {
        return toward.dot(force);
    }

    @Override
    public List<Pull> pulls(String words, List<Share> load) {
        double[][] against = new double[path.positions()][];
        double[] reversed = new double[path.positions()];
        Arrays.fill(reversed, -1);
        for (int i = 0; i < against.length; i++) {
            against[i] = new double[] {-toward.x(), -toward.y()};
        }
        List<Share> shares = new ArrayList<>();
        for (Share share : load) {
            shares.add(Shares.times(share, reversed, path.course()));
        }
        return List.of(Pull.force(words, frame.at(), against, Pull.Holds.ONE_WAY, shares)
                .through(frame));
    }
}
