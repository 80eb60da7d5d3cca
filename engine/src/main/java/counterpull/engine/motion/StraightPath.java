package counterpull.engine.motion;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Optional;

/**
 * A hand or a foot goes along a straight line while shoulder or hip stays where it is: presses, rows, pulldowns. The driving
 * coordinate is travel along the line from its start, m; positions are equal steps of it. Directions follow from the two-link
 * triangle, their derivatives from its Jacobian (docs/notation.md); they grow without bound at straight, so a range that comes
 * nearer to it than 2° is refused, as is one that leaves the line or the limb's reach.
 *
 * @param reach what goes along the line
 * @param attitude direction of the trunk, hip → shoulder, rad from x
 * @param start one end of the line, m from the fixed joint, where travel is 0
 * @param end the other end, m from the fixed joint
 */
public record StraightPath(Reach reach, double attitude, Vec start, Vec end) implements Motion {
    private static final double TOUCH = 1e-9;
    private static final Require.Limits PLACES = new Require.Limits(-3, 3);

    public StraightPath {
        Require.finite(attitude, "trunk direction", "rad");
        for (Vec at : List.of(start, end)) {
            Require.within(at.x(), PLACES, "end of the path, forward of the fixed joint", "m");
            Require.within(at.y(), PLACES, "end of the path, above the fixed joint", "m");
        }
        if (end.minus(start).norm() < 1e-6) {
            throw new Refusal(
                    Fault.COINCIDENT_POINTS,
                    "length of the path",
                    end.minus(start).norm(),
                    1e-6,
                    "m",
                    "a straight path needs two different ends");
        }
    }

    /** Length of the line, m. */
    public double length() {
        return end.minus(start).norm();
    }

    @Override
    public Optional<Joint> driver() {
        return Optional.empty();
    }

    @Override
    public List<Joint> joints() {
        return Anatomy.outward(reach.joint());
    }

    @Override
    public ChainPath path(Moving limb) {
        TwoLinks links = reach.links(limb.body());
        check(limb.range(), links);
        Course course = limb.course();
        ChainPath.Bends bends = new ChainPath.Bends(course.positions(), joints().size());
        Vec way = along().times(limb.sense());
        double before1 = 0;
        double before2 = 0;
        for (int i = 0; i < course.positions(); i++) {
            TwoLinks.Posture posture = links.posture(at(limb.driving(i)), way);
            before1 = near(before1, posture.first().value());
            before2 = near(before2, posture.second().value() - reach.offLink());
            bends.set(i, 0, before1, posture.first().first(), posture.first().second());
            bends.set(i, 1, before2, posture.second().first(), posture.second().second());
            still(bends, i);
        }
        return new ChainPath(Anatomy.chain(limb.body(), reach.joint()), course, reach.senses(attitude), bends);
    }

    private void still(ChainPath.Bends bends, int i) {
        int segment = 2;
        for (double direction : reach.beyond()) {
            bends.set(i, segment++, direction, 0, 0);
        }
    }

    /** The same direction without a jump of a whole turn from the position before. */
    private static double near(double before, double direction) {
        return before + Angles.wrap(direction - before);
    }

    private Vec along() {
        return end.minus(start).times(1 / length());
    }

    private Vec at(double travel) {
        return start.plus(along().times(travel));
    }

    // a line is farthest from a point at one of its ends, and nearest at one of them or at the point's foot on it
    private void check(WorkingRange range, TwoLinks links) {
        Require.Limits line = new Require.Limits(-TOUCH, length() + TOUCH);
        Require.within(range.bottom(), line, "bottom of the range along the path", "m");
        Require.within(range.top(), line, "top of the range along the path", "m");
        links.check(at(range.bottom()), "at the bottom");
        links.check(at(range.top()), "at the top");
        double foot = -start.dot(along());
        double low = Math.min(range.bottom(), range.top());
        double high = Math.max(range.bottom(), range.top());
        links.check(at(Math.min(high, Math.max(low, foot))), "on the way");
    }

    @Override
    public double gravity() {
        return Constants.STANDARD_GRAVITY;
    }

    @Override
    public String words() {
        return reach.words() + " goes along a straight path";
    }
}
