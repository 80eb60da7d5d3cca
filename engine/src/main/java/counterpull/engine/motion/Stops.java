package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * The tape readings at which a sled's bottom stop can be set, m. Empty where the sled has none: then the range ends where
 * the person ends it and nothing catches the load.
 */
public final class Stops {
    private static final double TOUCH = 1e-9;
    private final double[] marks;

    /** Stops at these tape readings, m, in any order. */
    public Stops(double... marks) {
        this.marks = marks.clone();
        for (double mark : marks) {
            Require.finite(mark, "stop's tape reading", "m");
        }
    }

    /** Whether there is any stop. */
    public boolean any() {
        return marks.length > 0;
    }

    /** The tape readings, m. */
    public double[] marks() {
        return marks.clone();
    }

    /**
     * The stops of a range that starts at {@code plate} or shallower, the deepest first: the stop next to the person's own
     * bottom on its shallower side, then the ones beyond.
     *
     * @param plate hip-to-plate distance of the person's own bottom, m
     * @param seat the seat setting that turns readings into distances
     * @param rail the rail
     * @return hip-to-plate distances, m; empty where no stop is shallow enough
     */
    public double[] shallowerThan(double plate, SeatSetting seat, Rail rail) {
        double[] found = new double[marks.length];
        int count = 0;
        for (double mark : marks) {
            double at = seat.plateAt(mark, rail);
            if (at >= plate - TOUCH) {
                found[count++] = Math.max(at, plate);
            }
        }
        double[] sorted = java.util.Arrays.copyOf(found, count);
        java.util.Arrays.sort(sorted);
        return sorted;
    }

    /** The first of {@link #shallowerThan}; refuses where there is none. */
    public double nextShallower(double plate, SeatSetting seat, Rail rail) {
        double[] found = shallowerThan(plate, seat, rail);
        if (found.length == 0) {
            throw new Refusal(
                    Fault.NO_STOP,
                    "hip-to-plate distance at the bottom",
                    plate,
                    Double.NaN,
                    "m",
                    "no stop lies on the shallower side of this person's bottom position with this seat setting: "
                            + "choose another seat setting or a shorter range");
        }
        return found[0];
    }
}
