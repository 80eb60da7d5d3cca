package counterpull.engine.uncertainty;

/**
 * Counts of effort in many cells at once, in bins of nearly equal ratio: nothing is stored of a draw, and adding two histograms gives what
 * counting everything in one would have given, in any order.
 *
 * <p>1024 bins from 2⁻¹⁰ (0.1 %) to 64: 64 to each doubling, so 0.8 to 1.6 % wide; what lies outside goes into the first or the last
 * one. A bin is read off the number's own exponent and first six digits as a 32-bit float, which is quicker than a logarithm. The
 * smallest and the largest value of each cell are kept as they are, so quantiles never lie outside what came up, and a cell in which
 * every draw is the same gives that value to the last bit. Inside a bin a quantile is interpolated.
 */
final class Histogram {
    private static final int BINS = 1024;
    private static final int DIGITS = 17;
    private static final int FIRST = Float.floatToIntBits(1f / 1024) >> DIGITS;

    private final int[] count;
    private final int[] known;
    private final double[] least;
    private final double[] most;

    Histogram(int cells) {
        count = new int[cells * BINS];
        known = new int[cells];
        least = new double[cells];
        most = new double[cells];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(most, Double.NEGATIVE_INFINITY);
    }

    /** Counts a value, zero or more. */
    void add(int cell, double value) {
        count[cell * BINS + bin(value)]++;
        known[cell]++;
        if (value < least[cell]) {
            least[cell] = value;
        }
        if (value > most[cell]) {
            most[cell] = value;
        }
    }

    private static int bin(double value) {
        int bin = (Float.floatToIntBits((float) value) >> DIGITS) - FIRST;
        return Math.max(0, Math.min(BINS - 1, bin));
    }

    private static double edge(int bin) {
        return Float.intBitsToFloat((bin + FIRST) << DIGITS);
    }

    /** Adds all that another one counted. */
    void add(Histogram other) {
        for (int at = 0; at < count.length; at++) {
            count[at] += other.count[at];
        }
        for (int cell = 0; cell < known.length; cell++) {
            known[cell] += other.known[cell];
            least[cell] = Math.min(least[cell], other.least[cell]);
            most[cell] = Math.max(most[cell], other.most[cell]);
        }
    }

    /** How many values a cell has. */
    int known(int cell) {
        return known[cell];
    }

    /** The value below which a share of a cell's values lies; NaN where it has none. */
    double quantile(int cell, double share) {
        if (known[cell] == 0) {
            return Double.NaN;
        }
        double rank = share * known[cell];
        int bin = 0;
        double before = 0;
        while (bin < BINS - 1 && before + count[cell * BINS + bin] < rank) {
            before += count[cell * BINS + bin];
            bin++;
        }
        int here = count[cell * BINS + bin];
        return between(cell, bin, here == 0 ? 0 : (rank - before) / here);
    }

    private double between(int cell, int bin, double share) {
        double low = Math.max(least[cell], bin == 0 ? 0 : edge(bin));
        double high = Math.min(most[cell], bin == BINS - 1 ? most[cell] : edge(bin + 1));
        double inside = high > low ? low + (high - low) * share : low;
        return Math.max(least[cell], Math.min(most[cell], inside));
    }
}
