package counterpull.engine.body;

/**
 * A joint of the leg, proximal first: ties between joints go to the proximal one. Angles are anatomical, in radians: hip
 * flexion, knee flexion (0 = straight), ankle dorsiflexion are positive. The torque of a joint is the net internal torque
 * in the sense of its {@linkplain #action() named action}; a negative value asks for the {@linkplain #opposite() opposite}.
 *
 * <p>Source of the sign convention: docs/notation.md.
 */
public enum Joint {
    HIP("hip", Action.HIP_EXTENSION, Action.HIP_FLEXION, -1),
    KNEE("knee", Action.KNEE_EXTENSION, Action.KNEE_FLEXION, 1),
    ANKLE("ankle", Action.ANKLE_PLANTARFLEXION, Action.ANKLE_DORSIFLEXION, -1);

    private final String words;
    private final Action action;
    private final Action opposite;
    private final int senseOfAction;

    Joint(String words, Action action, Action opposite, int senseOfAction) {
        this.words = words;
        this.action = action;
        this.opposite = opposite;
        this.senseOfAction = senseOfAction;
    }

    /** The joint's name as a person says it. */
    public String words() {
        return words;
    }

    /** The action that a positive torque of this joint names: extension, or plantarflexion at the ankle. */
    public Action action() {
        return action;
    }

    /** The action that a negative torque of this joint asks for. */
    public Action opposite() {
        return opposite;
    }

    /** +1 where the named action is a counter-clockwise torque on the distal segment, −1 where it is clockwise. */
    public int senseOfAction() {
        return senseOfAction;
    }

    /** −1: every named action of the leg (extension, plantarflexion) lowers its joint's anatomical angle. */
    public int angleSenseOfAction() {
        return -1;
    }
}
