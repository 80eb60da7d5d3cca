package counterpull.scenario.content;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.WorkingRange;
import java.util.Map;
import java.util.Optional;

/**
 * The ranges that one limb was measured to work over.
 *
 * @param press knee flexion on a sled, rad; empty where it was not measured
 * @param byJoint anatomical angle of the joint that drives a movement, rad; only measured ones
 */
public record Ranges(Optional<WorkingRange> press, Map<Joint, WorkingRange> byJoint) {
    public Ranges {
        byJoint = Map.copyOf(byJoint);
    }

    /** The range of a driving joint, from the end where a lift in that sense starts: +1 where the angle rises, −1 where it falls. */
    public Optional<WorkingRange> lifting(Joint joint, int sense) {
        return Optional.ofNullable(byJoint.get(joint)).map(own -> toward(own, sense));
    }

    private static WorkingRange toward(WorkingRange own, int sense) {
        boolean already = (own.top() - own.bottom()) * sense > 0;
        return already ? own : new WorkingRange(own.top(), own.bottom(), own.top());
    }
}
