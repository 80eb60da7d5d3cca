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

    /**
     * Standard uncertainty of the mean, m: as stated; else the tape's over the root of the number of readings; else from the repeats; else
     * {@value #ASSUMED} m, assumed.
     */
    double standardError(OptionalDouble tape) {
        double root = Math.sqrt(readings.size());
        if (uncertainty.isPresent()) {
            return uncertainty.getAsDouble();
        }
        return tape.orElse(saysItself() ? scatter() : ASSUMED) / root;
    }

    /** How many readings the scatter itself was judged by, less one; infinite where it is stated. */
    double degreesOfFreedom(OptionalDouble tape) {
        return tape.isEmpty() && saysItself() ? readings.size() - 1 : Double.POSITIVE_INFINITY;
    }

    /** The length with its interval. */
    Estimate estimate(OptionalDouble tape) {
        return Estimate.student(mean(), standardError(tape), degreesOfFreedom(tape));
    }
}
