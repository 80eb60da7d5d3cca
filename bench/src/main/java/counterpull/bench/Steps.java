package counterpull.bench;

import java.util.Arrays;
import java.util.Optional;

/**
 * The steps in which a scale shows its readings. A reading lies anywhere inside its step, which alone is a standard uncertainty of step/√12
 * (JCGM 100:2008, F.2.2.1). Readings that scatter by clearly less do not show their error: they fell into the same step.
 */
public final class Steps {
    private static final double ROUNDING = 1e-7;

    /** A scale that tells ten thousand steps apart is as good as one without. */
    private static final double FINE = 1e-4;

    private static final int FEWEST = 4;
    private static final double CLEARLY = 0.5;

    private Steps() {}

    /**
     * The largest step of which all readings are multiples, in whatever unit they were read, SI; 0 where none shows. Of two or three different
     * numbers it may be several of the scale's.
     */
    public static double of(double[] readings) {
        double largest = Arrays.stream(readings).map(Math::abs).max().orElse(0);
        double step = 0;
        for (double reading : readings) {
            step = common(Math.abs(reading), step, ROUNDING * largest);
        }
        boolean seen =
                readings.length >= FEWEST && Arrays.stream(readings).distinct().count() > 1;
        return seen && step > FINE * largest ? step : 0;
    }

    /** Euclid's algorithm on numbers that are rounded a little. */
    private static double common(double one, double other, double nothing) {
        double a = one;
        double b = other;
        while (b > nothing) {
            double rest = Math.abs(a - b * Math.rint(a / b));
            a = b;
            b = rest;
        }
        return a;
    }

    /**
     * Says so where readings whose error was judged by their scatter come in steps too coarse for that.
     *
     * @param name of a reading, without its number
     * @param kind what they measure
     * @param readings SI
     * @param scatter one standard deviation of a reading, as it was judged
     */
    public static Optional<Remark> coarse(String name, Kind kind, double[] readings, double scatter) {
        double step = of(readings);
        double sd = step / Math.sqrt(12);
        return scatter < CLEARLY * sd
                ? Optional.of(Remark.doubts("coarse-steps", "from " + name + " 1 on, the readings come in steps of ")
                        .then(step, kind)
                        .then(" and scatter by ")
                        .then(scatter, kind)
                        .then(
                                " alone, which is not their error: the intervals are too narrow; state the scale's accuracy, ")
                        .then(sd, kind)
                        .then(" or more"))
                : Optional.empty();
    }
}
