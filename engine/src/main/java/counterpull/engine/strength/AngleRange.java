package counterpull.engine.strength;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * A closed range of one joint's anatomical angle, rad.
 *
 * @param low smallest angle, rad
 * @param high largest angle, rad, above {@code low}
 */
public record AngleRange(double low, double high) {
    /** An end given in degrees must still count as inside after its conversion to radians. */
    private static final double ROUNDING = 1e-9;

    public AngleRange {
        Require.finite(low, "smallest angle", "rad");
        Require.finite(high, "largest angle", "rad");
        if (low >= high) {
            throw new Refusal(
                    Fault.EMPTY_RANGE, "angle range", low, high, "rad", "the largest angle must exceed the smallest");
        }
    }

    /** Whether an angle (rad) lies inside, the ends included. */
    public boolean contains(double angle) {
        return angle >= low - ROUNDING && angle <= high + ROUNDING;
    }

    /** The smallest range that holds this one and an angle (rad). */
    public AngleRange reaching(double angle) {
        return new AngleRange(Math.min(low, angle), Math.max(high, angle));
    }
}
