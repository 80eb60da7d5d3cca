package counterpull.scenario.content;

import counterpull.engine.body.Side;
import counterpull.scenario.content.Exercise.Using;

/**
 * Which limbs take part and how they share the outer load.
 *
 * @param using which limbs
 * @param leftShare the left limb's fraction of the outer load; counts where both take part
 */
public record Sides(Using using, double leftShare) {
    /** A limb's share of the outer load. */
    public double share(Side side) {
        if (using != Using.BOTH) {
            return 1;
        }
        return side == Side.LEFT ? leftShare : 1 - leftShare;
    }
}
