package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Radius of a cam against the lever's angle, as measured: how far the line runs for each radian that the lever turns. One reading is a
 * round cam, the same at every angle; between several the radius follows a monotone cubic with a continuous slope, which
 * stays between neighbouring readings (Fritsch and Carlson 1980); past the first and last nothing is said.
 *
 * <p>The angle is the lever's own, pivot → pad, from straight ahead, counter-clockwise positive as seen with the person facing right: what an
 * inclinometer laid along the lever reads (0 level with the pad in front, −90° hanging down). Where readings run past 180° they go on
 * counting. They span less than a whole turn.
 *
 * @param readings in any order, one or more, no two at one angle
 */
public record CamRadius(List<Reading> readings) {
    private static final double APART = 1e-6;

    /**
     * What was measured at one place of the lever.
     *
     * @param angle of the lever, rad, −2π to 2π
     * @param radius m, −1 to 1; positive where the stack rises while the limb lifts, negative where the stack sinks and helps
     */
    public record Reading(double angle, double radius) {
        private static final Require.Limits TURN = new Require.Limits(-2 * Math.PI, 2 * Math.PI);

        public Reading {
            Require.within(angle, TURN, "lever angle of a cam reading", "rad");
            Require.within(radius, new Require.Limits(-1, 1), "radius of the cam", "m");
        }
    }

    public CamRadius {
        List<Reading> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparingDouble(Reading::angle));
        readings = List.copyOf(sorted);
        if (readings.isEmpty()) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "readings of the cam",
                    0,
                    1,
                    "",
                    "a cam needs at least one reading of its radius");
        }
        for (int i = 1; i < readings.size(); i++) {
            double between = readings.get(i).angle() - readings.get(i - 1).angle();
            Require.within(between, new Require.Limits(APART, Math.PI), "angle between two cam readings", "rad");
        }
        double span =
                readings.get(readings.size() - 1).angle() - readings.get(0).angle();
        Require.within(span, new Require.Limits(0, 2 * Math.PI), "angle that the cam readings span", "rad");
    }

    /** A round cam, m. */
    public static CamRadius round(double radius) {
        return new CamRadius(List.of(new Reading(0, radius)));
    }
}
