package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import java.util.List;

/**
 * How far the answer depends on the way of pushing: the largest effort at either end of the stated interval around the push
 * angle, and where the limiting joint changes inside it. Efforts are convex in the tangent of the push angle, so the largest
 * lies at an end; which joint limits is looked at where a torque changes its sense, too, for there its effort falls to 0.
 *
 * @param spread half the interval, rad
 * @param lowPeak largest effort of the named joints pushing {@code spread} below the stated angle (toward the seat's foot end)
 * @param highPeak the same above it (toward the head)
 * @param changes at how many of the positions × phases the limiting joint is another one somewhere inside
 * @param looked how many positions × phases have a known effort
 */
public record PushCheck(double spread, double lowPeak, double highPeak, int changes, int looked) {
    /** Looks at both ends of the interval. */
    public static PushCheck of(PressProfile profile, List<Joint> named) {
        double spread = profile.task().pushing().spread();
        double low = 0;
        double high = 0;
        int changes = 0;
        int looked = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                Place at = new Place(profile, named, phase, i);
                Worst told = at.worst(0);
                Worst below = at.worst(-spread);
                Worst above = at.worst(spread);
                low = Math.max(low, below.effort);
                high = Math.max(high, above.effort);
                looked += told.joint == null ? 0 : 1;
                boolean other = told.joint != below.joint || told.joint != above.joint;
                changes += other || at.changesInside(told, spread) ? 1 : 0;
            }
        }
        return new PushCheck(spread, low, high, changes, looked);
    }

    private record Worst(Joint joint, double effort) {}

    private record Place(PressProfile profile, List<Joint> named, Phase phase, int position) {
        boolean changesInside(Worst told, double spread) {
            for (Joint joint : named) {
                for (PressLimb limb : profile.limbs()) {
                    double turn = reversal(limb, joint);
                    if (Math.abs(turn) < spread && worst(turn).joint != told.joint) {
                        return true;
                    }
                }
            }
            return false;
        }

        // how far the push must turn until the joint's torque is 0; NaN where turning does nothing
        private double reversal(PressLimb limb, Joint joint) {
            double told = Math.tan(limb.pushAngle(phase, position));
            double torque = limb.torque(joint, phase, position);
            double perTangent = limb.torquePushing(joint, phase, position, told + 1) - torque;
            return Math.atan(told - torque / perTangent) - limb.pushAngle(phase, position);
        }

        Worst worst(double turn) {
            Joint joint = null;
            double most = 0;
            for (Joint candidate : named) {
                for (PressLimb limb : profile.limbs()) {
                    double tangent = Math.tan(limb.pushAngle(phase, position) + turn);
                    double effort = limb.effortPushing(candidate, phase, position, tangent);
                    if (joint == null ? effort >= 0 : effort > most + Limiting.TIE) {
                        joint = candidate;
                        most = effort;
                    }
                }
            }
            return new Worst(joint, most);
        }
    }

    /** Largest effort anywhere in the interval's ends. */
    public double peak() {
        return Math.max(lowPeak, highPeak);
    }

    /** Whether the answer depends on how they push: the limiting joint changes somewhere, or the ceiling is passed. */
    public boolean matters(double ceiling) {
        return changes > 0 || peak() > ceiling;
    }
}
