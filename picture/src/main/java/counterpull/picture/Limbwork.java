package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.JointSense;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where one limb's joints and points are, m, in the plane's axes from the joint that does not move: the result's own numbers. A mutable
 * working value: it keeps the tracks it was asked for.
 */
final class Limbwork {
    private static final double AT_SHOULDER = 0.03;
    private static final int TRUNK = 2;
    private final ChainPath path;
    private final double arm;
    private final Map<BodyPoint, PointTrack> tracks = new HashMap<>();

    /**
     * @param path the limb
     * @param build for the length of an arm that hangs
     */
    Limbwork(ChainPath path, Build build) {
        this.path = path;
        arm = build.upperArm() + build.forearm();
    }

    ChainPath path() {
        return path;
    }

    int last() {
        return path.positions() - 1;
    }

    /** The joint that does not move. */
    Joint fixed() {
        return path.senses().get(0).joint();
    }

    /** Whether the chain stands on the ground, from the ankle upward. */
    boolean stands() {
        return fixed() == Joint.ANKLE && path.segments() > 1;
    }

    /** Direction of what is before the joint that does not move, rad: trunk (hip → shoulder), thigh, shank, upper arm, or straight ahead. */
    double before() {
        JointSense sense = path.senses().get(0);
        return switch (sense.joint()) {
            case HIP, HIP_SIDEWAYS, SHOULDER, SHOULDER_SIDEWAYS -> Math.PI - sense.offset();
            case KNEE -> sense.offset();
            case ANKLE -> -Math.PI / 2 - sense.offset();
            case SHOULDER_TURNING, ELBOW -> -sense.offset();
        };
    }

    /** The start of a segment; the number of segments gives the chain's far end. */
    Vec joint(int segment, int i) {
        return path.joint(segment, i);
    }

    Vec at(Joint joint, int i) {
        return path.joint(path.index(joint), i);
    }

    /** The far end of what a joint turns, away from the trunk. */
    Vec distal(Joint joint, int i) {
        int k = path.index(joint);
        if (!stands()) {
            return path.joint(k + 1, i);
        }
        return k == 0 ? new Vec(1, 0) : path.joint(k - 1, i);
    }

    /** +1 where the joint's named action turns what is distal counter-clockwise in the plane, else −1. */
    int sense(Joint joint) {
        int sense = path.senses().get(path.index(joint)).torqueSign();
        return stands() ? -sense : sense;
    }

    /** A point of the body. */
    Vec point(BodyPoint point, int i) {
        return tracks.computeIfAbsent(point, path::track).at(i);
    }

    /** Whether a point stands for hands that hang below the shoulder of somebody who stands. */
    boolean hangs(BodyPoint point) {
        double off = point.at()
                .minus(new Vec(path.chain().length(point.segment()), 0))
                .norm();
        return stands() && point.segment() == TRUNK && off < AT_SHOULDER;
    }

    /** Where a point's load is drawn: the point, or the hands that hang below it. */
    Vec drawn(BodyPoint point, int i) {
        Vec at = point(point, i);
        return hangs(point) ? at.plus(new Vec(0, -arm)) : at;
    }

    List<Joint> joints() {
        return path.joints();
    }
}
