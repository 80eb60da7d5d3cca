package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Segment;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * How anatomical angles and directions of segments hang together (docs/notation.md), and which segments follow a joint. A limb in a
 * frontal plane that is seen from its own side has its joints named for that plane.
 */
final class Anatomy {
    private Anatomy() {}

    /** The joints from this one outward, proximal first. */
    static List<Joint> outward(Joint from) {
        return switch (from) {
            case HIP -> List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE);
            case KNEE -> List.of(Joint.KNEE, Joint.ANKLE);
            case ANKLE -> List.of(Joint.ANKLE);
            case HIP_SIDEWAYS -> List.of(Joint.HIP_SIDEWAYS);
            case SHOULDER -> List.of(Joint.SHOULDER, Joint.ELBOW);
            case SHOULDER_SIDEWAYS -> List.of(Joint.SHOULDER_SIDEWAYS, Joint.ELBOW);
            case SHOULDER_TURNING -> List.of(Joint.SHOULDER_TURNING);
            case ELBOW -> List.of(Joint.ELBOW);
        };
    }

    /** The chain from a joint outward. */
    static Chain chain(BodySide body, Joint from) {
        Chain.Builder builder = Chain.build();
        for (Joint joint : outward(from)) {
            Segment part = segment(body, joint);
            builder.segment(part.length(), part.mass(), new Vec(part.comAlong(), part.comAcross()), part.inertia());
        }
        return builder.done();
    }

    private static Segment segment(BodySide body, Joint joint) {
        return switch (joint) {
            case HIP -> body.leg().thigh();
            case KNEE -> body.leg().shank();
            case ANKLE -> body.leg().foot().asSegment();
            case HIP_SIDEWAYS -> straightLeg(body);
            case SHOULDER, SHOULDER_SIDEWAYS -> arm(body).upperArm();
            case SHOULDER_TURNING, ELBOW -> arm(body).forearm();
        };
    }

    private static counterpull.engine.body.Arm arm(BodySide body) {
        return body.arm()
                .orElseThrow(() -> new Refusal(
                        Fault.OUTSIDE_PUBLISHED_RANGE,
                        "arm",
                        Double.NaN,
                        Double.NaN,
                        "",
                        "this movement needs the arm's lengths and masses"));
    }

    /** Thigh, shank and foot in one straight piece, as seen from the front: the foot's mass half its ankle's height below the ankle. */
    private static Segment straightLeg(BodySide body) {
        Foot foot = body.leg().foot();
        Segment below = new Segment(foot.ankleHeight(), foot.mass(), foot.ankleHeight() / 2, 0, foot.inertia());
        return joined(joined(body.leg().thigh(), body.leg().shank()), below);
    }

    private static Segment joined(Segment near, Segment far) {
        double mass = near.mass() + far.mass();
        double farCom = near.length() + far.comAlong();
        double com = (near.mass() * near.comAlong() + far.mass() * farCom) / mass;
        double toNear = near.comAlong() - com;
        double toFar = farCom - com;
        double inertia = near.inertia() + far.inertia() + near.mass() * toNear * toNear + far.mass() * toFar * toFar;
        return new Segment(near.length() + far.length(), mass, com, 0, inertia);
    }

    /** Direction of the segment after a joint, rad, from the direction before it and the anatomical angle. */
    static double direction(Joint joint, double before, double angle) {
        JointSense sense = sense(joint, before);
        return sense.angleSign() * (angle - sense.offset());
    }

    /** How a joint sits at the start of a chain whose fixed part points {@code before}. */
    static JointSense sense(Joint joint, double before) {
        JointSense inside = sense(joint);
        return new JointSense(
                joint, inside.angleSign(), inside.offset() - inside.angleSign() * before, inside.torqueSign());
    }

    /** How a joint sits between two segments of a chain that hangs from the body. */
    static JointSense sense(Joint joint) {
        int torque = joint.senseOfAction();
        return switch (joint) {
            case HIP, HIP_SIDEWAYS, SHOULDER, SHOULDER_SIDEWAYS -> new JointSense(joint, 1, Math.PI, torque);
            case KNEE -> new JointSense(joint, -1, 0, torque);
            case ANKLE -> new JointSense(joint, 1, -Math.PI / 2, torque);
            case SHOULDER_TURNING, ELBOW -> new JointSense(joint, 1, 0, torque);
        };
    }

    /** The senses of a whole chain from a joint outward. */
    static List<JointSense> senses(Joint from, double before) {
        List<JointSense> senses = new ArrayList<>();
        for (Joint joint : outward(from)) {
            senses.add(joint == from ? sense(joint, before) : sense(joint));
        }
        return senses;
    }
}
