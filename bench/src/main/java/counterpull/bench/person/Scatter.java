package counterpull.bench.person;

import counterpull.bench.Budget;
import java.util.List;

/**
 * Mean and scatter of repeated readings.
 *
 * @param count how many readings
 * @param mean in the readings' SI unit
 * @param sd standard deviation of one reading, in the same unit; NaN for one reading
 */
public record Scatter(int count, double mean, double sd) {
    /** Of a sample of one or more. */
    public static Scatter of(List<Double> readings) {
        double mean = 0;
        for (double reading : readings) {
            mean += reading / readings.size();
        }
        double squares = 0;
        for (double reading : readings) {
            squares += (reading - mean) * (reading - mean);
        }
        return new Scatter(readings.size(), mean, Math.sqrt(squares / (readings.size() - 1)));
    }

    /** The same mean as of one reading, whose scatter nobody saw. */
    Scatter single() {
        return new Scatter(1, mean, Double.NaN);
    }

    /** Whether there is a scatter at all. */
    public boolean repeated() {
        return count > 1;
    }

    /** Of the mean; 0 where nothing was repeated, since then it is in what the instrument is known to do. */
    public double standardErrorOfMean() {
        return repeated() ? sd / Math.sqrt(count) : 0;
    }

    /** A budget with the mean's own uncertainty in it; as it was where nothing was repeated. */
    Budget into(Budget budget) {
        return repeated() ? budget.with(standardErrorOfMean(), count - 1) : budget;
    }

    /** Of readings that are logarithms: the coefficient of variation of what they are logarithms of (Bland and Altman 1996; from memory). */
    public double variation() {
        return Math.sqrt(Math.expm1(sd * sd));
    }
}
