package counterpull.engine.uncertainty;

import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.strength.CurveDraws;

/** What a further reading of an input would do. */
public sealed interface Again {
    /** No reading helps: it is another one at the next repetition. */
    record EachTime() implements Again {}

    /** There is no way to read it here. */
    record NoWay() implements Again {}

    /**
     * A reading of the input itself.
     *
     * @param words what to do, as an order ("measure the rail's angle once more")
     * @param remaining which share of the standard uncertainty is left after it, 0 to 1
     */
    record Reading(String words, double remaining) implements Again {
        /** A second reading as good as the first and independent of it: the mean of both has half the variance. */
        static Again once(String words) {
            return new Reading(words, Math.sqrt(0.5));
        }
    }

    /**
     * A strength test at any angle.
     *
     * @param side whose limb
     * @param action what is tested
     * @param draws what is believed so far
     */
    record Test(Side side, Action action, CurveDraws draws) implements Again {}
}
