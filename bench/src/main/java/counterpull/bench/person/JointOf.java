package counterpull.bench.person;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;

/** The joint of an action, and which way the action turns what is beyond it. */
final class JointOf {
    private JointOf() {}

    static Joint joint(Action action) {
        for (Joint joint : Joint.values()) {
            if (joint.action() == action || joint.opposite() == action) {
                return joint;
            }
        }
        throw new IllegalStateException("no joint does " + action);
    }

    /** +1 where the action turns the limb counter-clockwise in the notation's view, else −1. */
    static int sense(Action action) {
        Joint joint = joint(action);
        return joint.action() == action ? joint.senseOfAction() : -joint.senseOfAction();
    }
}
