package counterpull.engine.body;

import java.util.List;

/**
 * A joint as it turns in one plane, leg before arm and proximal first: ties between joints go to the proximal one. Angles are
 * anatomical, in radians: hip flexion, knee flexion (0 = straight), ankle dorsiflexion, hip abduction, shoulder elevation (forward
 * or sideways, 0 = arm along the trunk), external rotation (0 = forearm straight ahead) and elbow flexion are positive. The torque
 * of a joint is the net internal torque in the sense of its {@linkplain #action() named action}; a negative value asks for the
 * {@linkplain #opposite() opposite}.
 *
 * <p>A joint that turns in several planes has one entry for each, since what a person has differs. Source of the sign
 * convention: docs/notation.md.
 */
public enum Joint {
    HIP("hip", "hip flexion", Action.HIP_EXTENSION, Action.HIP_FLEXION, Sense.FALLING),
    KNEE("knee", "knee flexion", Action.KNEE_EXTENSION, Action.KNEE_FLEXION, Sense.SHANK),
    ANKLE("ankle", "dorsiflexion", Action.ANKLE_PLANTARFLEXION, Action.ANKLE_DORSIFLEXION, Sense.FALLING),
    HIP_SIDEWAYS("hip sideways", "hip abduction", Action.HIP_ABDUCTION, Action.HIP_ADDUCTION, Sense.RISING),
    SHOULDER("shoulder", "shoulder elevation", Action.SHOULDER_FLEXION, Action.SHOULDER_EXTENSION, Sense.RISING),
    SHOULDER_SIDEWAYS(
            "shoulder sideways",
            "shoulder elevation sideways",
            Action.SHOULDER_ABDUCTION,
            Action.SHOULDER_ADDUCTION,
            Sense.RISING),
    SHOULDER_TURNING(
            "shoulder turning",
            "external rotation",
            Action.SHOULDER_EXTERNAL_ROTATION,
            Action.SHOULDER_INTERNAL_ROTATION,
            Sense.RISING),
    ELBOW("elbow", "elbow flexion", Action.ELBOW_FLEXION, Action.ELBOW_EXTENSION, Sense.RISING);

    /** The joints of a leg in the sagittal plane, proximal first: those of a press. */
    public static final List<Joint> LEG = List.of(HIP, KNEE, ANKLE);

    private final String words;
    private final String angleWords;
    private final Action action;
    private final Action opposite;
    private final Sense sense;

    Joint(String words, String angleWords, Action action, Action opposite, Sense sense) {
        this.words = words;
        this.angleWords = angleWords;
        this.action = action;
        this.opposite = opposite;
        this.sense = sense;
    }

    // which way a named action turns the distal segment, and what it does to the anatomical angle
    private enum Sense {
        /** Extension of hip and ankle: clockwise, the angle falls. */
        FALLING(-1, -1),
        /** Extension of the knee: counter-clockwise, the angle falls. */
        SHANK(1, -1),
        /** Abduction, elevation, rotation, elbow flexion: counter-clockwise, the angle rises. */
        RISING(1, 1);

        private final int torque;
        private final int angle;

        Sense(int torque, int angle) {
            this.torque = torque;
            this.angle = angle;
        }
    }

    /** The joint's name as a person says it. */
    public String words() {
        return words;
    }

    /** The name of its anatomical angle as a person says it ("knee flexion"). */
    public String angleWords() {
        return angleWords;
    }

    /** The action that a positive torque of this joint names: extension in the leg, flexion or elevation in the arm. */
    public Action action() {
        return action;
    }

    /** The action that a negative torque of this joint asks for. */
    public Action opposite() {
        return opposite;
    }

    /**
     * +1 where the named action is a counter-clockwise torque on the distal segment, −1 where it is clockwise; of an arm in a
     * frontal plane the elbow may be bent the other way, which its posture then says.
     */
    public int senseOfAction() {
        return sense.torque;
    }

    /** +1 where the named action raises the joint's anatomical angle, −1 where it lowers it. */
    public int angleSenseOfAction() {
        return sense.angle;
    }
}
