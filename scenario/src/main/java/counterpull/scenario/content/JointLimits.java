package counterpull.scenario.content;

import counterpull.engine.Require.Limits;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.JointRanges;
import java.util.Map;

/**
 * The stated limits of a limb's joints.
 *
 * @param byJoint lowest and highest anatomical angle, rad, infinite where not stated; only joints with a stated limit
 */
public record JointLimits(Map<Joint, Limits> byJoint) {
    public JointLimits {
        byJoint = Map.copyOf(byJoint);
    }

    /** As the engine takes them. */
    public JointRanges ranges() {
        JointRanges ranges = JointRanges.open();
        for (Joint joint : Joint.values()) {
            if (byJoint.containsKey(joint)) {
                ranges = ranges.with(joint, byJoint.get(joint));
            }
        }
        return ranges;
    }
}
