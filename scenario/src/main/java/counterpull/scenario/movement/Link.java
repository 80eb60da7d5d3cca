package counterpull.scenario.movement;

import counterpull.engine.body.Arm;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Segment;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.Motion;
import java.util.List;
import java.util.Optional;

/** A part of the body that moves in a movement, as a file names it, and the joint from which places on it are measured. */
public enum Link {
    THIGH("thigh", "hip"),
    SHANK("shank", "knee"),
    FOOT("foot", "ankle"),
    LEG("leg", "hip"),
    UPPER_ARM("upper arm", "shoulder"),
    FOREARM("forearm", "elbow"),
    TRUNK("trunk", "hip"),
    /** The shank of somebody who stands: the foot does not move, so places on it are measured from the ankle. */
    STANDING_SHANK("shank", "ankle"),
    /** The thigh of somebody who stands. */
    STANDING_THIGH("thigh", "knee");

    private final String words;
    private final String from;

    Link(String words, String from) {
        this.words = words;
        this.from = from;
    }

    /** How a file names it. */
    public String words() {
        return words;
    }

    /** The joint from which places on it are measured. */
    public String from() {
        return from;
    }

    /** Its length in one side of a body, m; empty where that body's part is not known. */
    Optional<Double> length(BodySide side) {
        return switch (this) {
            case THIGH, STANDING_THIGH -> Optional.of(side.leg().thigh().length());
            case SHANK, STANDING_SHANK -> Optional.of(side.leg().shank().length());
            case FOOT -> Optional.of(side.leg().foot().asSegment().length());
            case LEG ->
                Optional.of(side.leg().thigh().length()
                        + side.leg().shank().length()
                        + side.leg().foot().ankleHeight());
            case UPPER_ARM -> side.arm().map(Arm::upperArm).map(Segment::length);
            case FOREARM -> side.arm().map(Arm::forearm).map(Segment::length);
            case TRUNK -> side.trunk().map(Segment::length);
        };
    }

    /** How far past its end something worn or held on it may act, m: a foot, a hand with a bar, a head; our own. */
    double beyond() {
        return switch (this) {
            case FOREARM, TRUNK -> 0.6;
            default -> 0.25;
        };
    }

    /** The parts that move, the one at the joint that stays in place first: the segments of the engine's chain. */
    public static List<Link> of(Motion motion) {
        return motion instanceof BalancedStand
                ? List.of(STANDING_SHANK, STANDING_THIGH, TRUNK)
                : motion.joints().stream().map(Link::after).toList();
    }

    /** The part that starts at a joint. */
    private static Link after(Joint joint) {
        return switch (joint) {
            case HIP -> THIGH;
            case KNEE -> SHANK;
            case ANKLE -> FOOT;
            case HIP_SIDEWAYS -> LEG;
            case SHOULDER, SHOULDER_SIDEWAYS -> UPPER_ARM;
            case SHOULDER_TURNING, ELBOW -> FOREARM;
        };
    }

    /** The joints beyond one that turns. */
    static List<Joint> beyond(Joint turning) {
        return switch (turning) {
            case HIP -> List.of(Joint.KNEE, Joint.ANKLE);
            case KNEE -> List.of(Joint.ANKLE);
            case SHOULDER, SHOULDER_SIDEWAYS -> List.of(Joint.ELBOW);
            case ANKLE, HIP_SIDEWAYS, SHOULDER_TURNING, ELBOW -> List.of();
        };
    }
}
