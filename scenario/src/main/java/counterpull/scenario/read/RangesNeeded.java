package counterpull.scenario.read;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;

/** Which of a limb's ranges a scenario needs; a missing one is a problem of that limb, never a default. */
sealed interface RangesNeeded {
    /** Reports what is missing in a limb. */
    void check(Fields limb, Side side);

    /** A press needs the range on the sled, of every limb that is described. */
    record OfPress() implements RangesNeeded {
        @Override
        public void check(Fields limb, Side side) {
            limb.require(
                    "range",
                    "A rail press goes through knee flexion: measure it on the machine at both ends, free of pain, and give"
                            + " range: {bottom, top}");
        }
    }

    /**
     * An exercise needs the range of the joint that drives it, of the limbs that take part.
     *
     * @param joint the joint that drives
     * @param sides the limbs
     */
    record OfJoint(Joint joint, Sides sides) implements RangesNeeded {
        @Override
        public void check(Fields limb, Side side) {
            String key = Words.angle(joint);
            if (sides.using().uses(side) && limb.absent("ranges", key)) {
                limb.report(
                        Code.RANGE_NOT_MEASURED,
                        "ranges",
                        "this exercise goes through " + key + ", but the " + side.words()
                                + " limb's range of it is not here",
                        "Measure " + key + " with an inclinometer at both ends, free of pain, and give ranges, " + key
                                + ": {bottom, top}; or give the exercise a range");
            }
        }
    }

    /** Nothing: the exercise has its own range, or it could not be read. */
    record Nothing() implements RangesNeeded {
        @Override
        public void check(Fields limb, Side side) {}
    }
}
