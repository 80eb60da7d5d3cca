package counterpull.engine.uncertainty;

import counterpull.engine.body.Action;
import counterpull.engine.body.Side;

/**
 * A reading that could be taken next, and how sure the largest effort would be after it.
 *
 * @param what what is read
 * @param before standard uncertainty of the largest effort now, as a share of it
 * @param after the same after the reading, to first order
 */
public record NextReading(What what, double before, double after) {
    /** What is read. */
    public sealed interface What {}

    /**
     * An input itself.
     *
     * @param words what to do, as an order
     */
    public record Measure(String words) implements What {}

    /**
     * A strength test held still.
     *
     * @param side whose limb
     * @param action what is tested
     * @param angle at which angle of the joint, rad
     */
    public record Test(Side side, Action action, double angle) implements What {}

    /** Which share of the variance is gone after it. */
    public double gain() {
        return 1 - after * after / (before * before);
    }
}
