package counterpull.engine.uncertainty;

/**
 * Where an effort lies: the middle one of all draws, and the ends between which nine of ten of them lie. Pure numbers, 1 = all that this
 * person has; NaN where most draws do not know it.
 *
 * @param low 5 % of the draws lie below
 * @param middle half of them
 * @param high 5 % of them lie above
 * @param known share of the draws in which it is known
 */
public record Band(double low, double middle, double high, double known) {
    private static final double MOSTLY = 0.5;

    static Band of(Histogram histogram, int cell, int draws) {
        double known = draws == 0 ? 0 : (double) histogram.known(cell) / draws;
        if (known < MOSTLY) {
            return new Band(Double.NaN, Double.NaN, Double.NaN, known);
        }
        return new Band(
                histogram.quantile(cell, 0.05), histogram.quantile(cell, 0.5), histogram.quantile(cell, 0.95), known);
    }
}
