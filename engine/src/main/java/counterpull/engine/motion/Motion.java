package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import java.util.List;
import java.util.Optional;

/**
 * A kind of movement: it solves the posture of one limb at every position of a range. New exercises are other numbers for one of
 * these, not new code. Angles rad, lengths m; the plane has x forward (or to the side) and y up.
 */
public sealed interface Motion permits Hinge, StraightPath, BalancedStand {
    /** Which joint's anatomical angle drives it and counts its positions; empty where travel along a path does. */
    Optional<Joint> driver();

    /** The joints it computes, proximal first: the order in which ties go. */
    List<Joint> joints();

    /**
     * The posture of one limb over a range.
     *
     * @param limb whose limb, over which range, at what time, carrying what
     * @return the chain from the joint that does not move
     */
    ChainPath path(Moving limb);

    /** Acceleration of gravity in the plane: standard gravity downward, or 0 in a horizontal plane, m/s². */
    double gravity();

    /** The movement in words. */
    String words();

    /**
     * One limb about to move.
     *
     * @param body lengths and masses of its side
     * @param share fraction of what both sides share (the trunk, a bar) that is this limb's, above 0 to 1
     * @param range driving coordinate at bottom and top: a joint's angle, rad, or travel along the path, m
     * @param course the stroke
     * @param carried masses on the chain, on which a balanced stand's lean depends; whole, not the limb's share
     */
    record Moving(BodySide body, double share, WorkingRange range, Course course, List<Carried> carried) {
        public Moving {
            carried = List.copyOf(carried);
            Require.positive(share, "share of the load", "");
        }

        /** Driving coordinate at position i. */
        public double driving(int i) {
            return range.bottom() + (range.top() - range.bottom()) * course.fraction(i);
        }

        /** d(driving coordinate)/dx: +1 where it rises toward the top, −1 where it falls. */
        public double sense() {
            return Math.signum(range.top() - range.bottom());
        }
    }

    /**
     * A mass that rides on a point of the body.
     *
     * @param at where
     * @param mass kg, zero or more
     */
    record Carried(BodyPoint at, double mass) {}
}
