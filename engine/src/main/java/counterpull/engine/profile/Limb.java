package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Side;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.strength.LimbStrength;

/**
 * One limb that takes part, leg or arm of one side: its own lengths, range, strength and share of the external load.
 *
 * @param side left or right
 * @param body lengths, masses and inertia of this side
 * @param share fraction of the external load it takes, above 0 to 1; its own weight and inertia are always its own
 * @param range its working range in the driving coordinate of the movement
 * @param ranges its joints' own limits
 * @param strength what it has at each joint
 */
public record Limb(
        Side side, BodySide body, double share, WorkingRange range, JointRanges ranges, LimbStrength strength) {
    public Limb {
        Require.positive(share, "share of the load", "");
        Require.within(share, new Require.Limits(0, 1), "share of the load", "");
    }

    /** A leg of which nothing else is known than what a press needs. */
    public Limb(Side side, Leg leg, double share, WorkingRange range, JointRanges ranges, LimbStrength strength) {
        this(side, BodySide.of(leg), share, range, ranges, strength);
    }

    /** The leg of this side. */
    public Leg leg() {
        return body.leg();
    }

    /** The same limb with another body. */
    public Limb with(BodySide other) {
        return new Limb(side, other, share, range, ranges, strength);
    }

    /** The same limb with other strength. */
    public Limb with(LimbStrength other) {
        return new Limb(side, body, share, range, ranges, other);
    }

    /** The same limb with other limits of its joints. */
    public Limb with(JointRanges other) {
        return new Limb(side, body, share, range, other, strength);
    }
}
