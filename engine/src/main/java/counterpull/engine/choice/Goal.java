package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import java.util.EnumSet;
import java.util.List;

/**
 * What a professional asks of a setup: wishes (the target) and hard limits, kept apart.
 *
 * @param target effort wanted along the range
 * @param ceiling effort that no named joint may pass anywhere in any phase, above 0 to 2
 * @param floor least contact force along the rail in every phase, N, zero or more
 * @param joints the joints that are looked at, in any order; kept proximal first, each once
 * @param caps limits on torque, kneecap stress and the turn
 * @param straying whether the limits must hold over the whole stated interval of push directions
 */
public record Goal(
        EffortTarget target, double ceiling, double floor, List<Joint> joints, Caps caps, Straying straying) {
    public Goal {
        Require.positive(ceiling, "effort ceiling", "");
        Require.within(ceiling, new Require.Limits(0, 2), "effort ceiling", "");
        Require.within(floor, new Require.Limits(0, 1e5), "floor on the contact force", "N");
        Require.positive(joints.size(), "joints named by the target", "");
        // proximal first and each once, for ties go to the proximal one
        joints = List.copyOf(EnumSet.copyOf(joints));
    }

    /** Over which push directions the limits hold. */
    public enum Straying {
        /** As they are told to push. */
        AS_TOLD,
        /** Anywhere in the stated interval around it. */
        WHOLE_INTERVAL
    }
}
