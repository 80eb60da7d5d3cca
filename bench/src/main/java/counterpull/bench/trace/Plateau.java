package counterpull.bench.trace;

/**
 * The second in which an effort was highest on the mean.
 *
 * @param mean N
 * @param from its beginning, s
 * @param to its end, s
 * @param steadiness standard deviation of the force inside it over its mean: 0 where it was held like a rock
 */
public record Plateau(double mean, double from, double to, double steadiness) {
    /** How long a plateau is, s. */
    public static final double WINDOW = 1.0;
}
