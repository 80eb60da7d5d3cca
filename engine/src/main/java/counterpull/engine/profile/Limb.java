package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Side;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.strength.LimbStrength;

/**
 * One leg that takes part: its own lengths, range, strength and share of the external load.
 *
 * @param side left or right
 * @param leg lengths, masses and inertia
 * @param share fraction of the external load it takes, above 0 to 1; its own weight and inertia are always its own
 * @param range its working range
 * @param ranges its joints' own limits
 * @param strength what it has at each joint
 */
public record Limb(Side side, Leg leg, double share, WorkingRange range, JointRanges ranges, LimbStrength strength) {
    public Limb {
        Require.positive(share, "share of the load", "");
        Require.within(share, new Require.Limits(0, 1), "share of the load", "");
    }
}
