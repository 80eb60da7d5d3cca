package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One length measured with a tape, once or several times.
 *
 * @param readings m, in the order taken
 * @param uncertainty stated standard uncertainty of their mean, m; empty where the repeats or the tape's own accuracy say it
 */
public record TapeReadings(List<Double> readings, OptionalDouble uncertainty) {
    /** Of a length beside a hanging piece that is read once and of which nothing is stated; our assumption. */
    static final double ASSUMED = 0.002;

    private static final double CLEAR = 4;

    public TapeReadings {
        readings = List.copyOf(readings);
    }

    /** Read once, nothing stated. */
    public static TapeReadings once(double length) {
        return new TapeReadings(List.of(length), OptionalDouble.empty());
    }

    /** Mean of the readings, m; NaN without any. */
    public double mean() {
        return readings.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    }

    /** Scatter of one reading, m; NaN for fewer than two. */
    double scatter() {
        double mean = mean();
        double squares = readings.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        return readings.size() < 2 ? Double.NaN : Math.sqrt(squares / (readings.size() - 1));
    }

    boolean saysItself() {
        return uncertainty.isEmpty() && readings.size() > 1 && scatter() > 0;
    }

    /** Whether the repeats lie farther apart than a tape that is so sure makes them, by more than chance (beyond four standard deviations). */
    boolean beyond(OptionalDouble tape) {
        if (tape.isEmpty() || !saysItself()) {
            return false;
        }
        double left = readings.size() - 1.0;
        double squares = left * Math.pow(scatter() / tape.getAsDouble(), 2);
        return squares > left + CLEAR * Math.sqrt(2 * left) + CLEAR;
    }

    /** What is stated of the tape, where the repeats do not contradict it. */
    private OptionalDouble believed(OptionalDouble tape) {
        return beyond(tape) ? OptionalDouble.empty() : tape;
    }

    /**
     * Standard uncertainty of the mean, m: as stated; else the tape's over the root of the number of readings; else, and where the repeats
     * contradict the tape's, from the repeats; else {@value #ASSUMED} m, assumed.
     */
    double standardError(OptionalDouble tape) {
        double root = Math.sqrt(readings.size());
        if (uncertainty.isPresent()) {
            return uncertainty.getAsDouble();
        }
        return believed(tape).orElse(saysItself() ? scatter() : ASSUMED) / root;
    }

    /** How many readings the scatter itself was judged by, less one; infinite where it is stated. */
    double degreesOfFreedom(OptionalDouble tape) {
        return believed(tape).isEmpty() && saysItself() ? readings.size() - 1 : Double.POSITIVE_INFINITY;
    }

    /** The length with its interval. */
    Estimate estimate(OptionalDouble tape) {
        return Estimate.student(mean(), standardError(tape), degreesOfFreedom(tape));
    }
}
