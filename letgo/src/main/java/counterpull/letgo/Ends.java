package counterpull.letgo;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * How far a machine is followed: from the place that ends its way down to the one that ends its way up, in its own
 * coordinate (m along a rail, rad of a lever).
 *
 * @param low the lower end
 * @param bottom what is there
 * @param high the upper end, above {@code low}
 */
public record Ends(double low, Bottom bottom, double high) {
    /** What a machine meets at its lower end. */
    public enum Bottom {
        /** A stop that catches it. */
        STOP,
        /** Nothing: it goes on, and nobody has said how far. */
        NOTHING
    }

    public Ends {
        Require.finite(low, "lower end", "m or rad");
        Require.finite(high, "upper end", "m or rad");
        if (high <= low) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "upper end",
                    high,
                    low,
                    "m or rad",
                    "a machine's upper end must lie above its lower end of " + low);
        }
    }

    /** Whether a place is at an end or past it when it is come to by moving this way. */
    boolean reached(double at, Sense sense) {
        return sense == Sense.DOWN ? at <= low : at >= high;
    }

    /** How far it still is to the end that lies this way; negative past it. */
    double left(double at, Sense sense) {
        return sense == Sense.DOWN ? at - low : high - at;
    }

    /** A place moved onto the nearer end where it lies past one, as a place at an end may by rounding. */
    double within(double at) {
        return Math.min(high, Math.max(low, at));
    }

    /** How it ends where it gets to the end that lies this way. */
    Ending ending(Sense sense) {
        if (sense == Sense.UP) {
            return Ending.AT_THE_TOP;
        }
        return bottom == Bottom.STOP ? Ending.ON_THE_STOP : Ending.NOTHING_CATCHES_IT;
    }
}
