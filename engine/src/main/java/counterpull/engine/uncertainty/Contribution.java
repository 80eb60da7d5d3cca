package counterpull.engine.uncertainty;

import java.util.List;

/**
 * What one input's standard uncertainty does to the largest effort, all others as measured.
 *
 * @param name the input as a person says it
 * @param spread its standard uncertainty
 * @param source where that comes from
 * @param low the smaller of the largest efforts with the input one standard uncertainty to either side
 * @param high the larger of them
 * @param slopes what each of its independent numbers does to the logarithm of the largest effort, per standard deviation: half the
 *     difference of both sides
 * @param share of the variance of that logarithm that is this input's, 0 to 1
 * @param again what a further reading would do
 */
public record Contribution(
        String name,
        Spread spread,
        String source,
        double low,
        double high,
        List<Double> slopes,
        double share,
        Again again) {
    public Contribution {
        slopes = List.copyOf(slopes);
    }

    /** Variance of the logarithm of the largest effort that this input makes. */
    public double variance() {
        double sum = 0;
        for (double slope : slopes) {
            sum += slope * slope;
        }
        return sum;
    }

    /** Standard uncertainty of the largest effort that this input makes, as a share of it. */
    public double effect() {
        return Math.sqrt(variance());
    }

    Contribution of(double total) {
        double part = total > 0 ? variance() / total : 0;
        return new Contribution(name, spread, source, low, high, slopes, part, again);
    }
}
