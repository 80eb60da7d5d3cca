package counterpull.engine.choice;

import counterpull.engine.choice.SplitSets.Scored;
import java.util.ArrayList;
import java.util.List;

/**
 * Pairs whole sets with upper ones, in steps of one whole set. Whole sets come in the order of the best they could do with an
 * ideal partner, so that the pairing ends where none can help any more.
 */
final class SplitPairs {
    private final double changeover;
    private final double[] least;
    private final List<Scored> lows;
    private final List<Scored> highs;
    private final SplitBest best;
    private int next;

    /**
     * Nothing paired yet.
     *
     * @param wholes sets over the whole range
     * @param uppers sets over its upper part
     * @param changeover where that begins, as a fraction of the whole range's travel
     * @param best where the best pairs are kept
     */
    SplitPairs(List<Scored> wholes, List<Scored> uppers, double changeover, SplitBest best) {
        this.changeover = changeover;
        this.best = best;
        boolean any = !wholes.isEmpty() && !uppers.isEmpty();
        least = any ? least(uppers) : new double[0];
        lows = any ? byBound(wholes, least) : List.of();
        highs = any ? byBound(uppers, least(wholes)) : List.of();
    }

    boolean finished() {
        return next >= lows.size();
    }

    /** Pairs one more whole set; answers how many pairs that were. */
    int advance() {
        Scored low = lows.get(next);
        next++;
        if (bound(low.missed(), least) >= best.bar()) {
            next = lows.size();
            return 0;
        }
        for (Scored high : highs) {
            double mean = mean(low.missed(), high.missed(), best.bar());
            if (mean < best.bar()) {
                best.keep(new SplitSetup(low.candidate(), high.candidate(), changeover, Math.sqrt(mean)));
            }
        }
        return highs.size();
    }

    private static List<Scored> byBound(List<Scored> sets, double[] ideal) {
        double[] bound = new double[sets.size()];
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < bound.length; k++) {
            bound[k] = bound(sets.get(k).missed(), ideal);
            order.add(k);
        }
        order.sort((a, b) -> Double.compare(bound[a], bound[b]));
        List<Scored> sorted = new ArrayList<>();
        for (int k : order) {
            sorted.add(sets.get(k));
        }
        return sorted;
    }

    /** The least known value of all sets at each place; infinite where none knows any. */
    private static double[] least(List<Scored> sets) {
        double[] least = new double[sets.get(0).missed().length];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (Scored set : sets) {
            for (int i = 0; i < least.length; i++) {
                if (set.missed()[i] < least[i]) {
                    least[i] = set.missed()[i];
                }
            }
        }
        return least;
    }

    /** No more than the mean of this set with any partner: the least sum over the most places that could count. */
    private static double bound(double[] one, double[] least) {
        double sum = 0;
        int most = 0;
        for (int i = 0; i < one.length; i++) {
            double smaller = Math.min(one[i], least[i]);
            sum += smaller < Double.POSITIVE_INFINITY ? smaller : 0;
            boolean known = !Double.isNaN(one[i]) && one[i] < Double.POSITIVE_INFINITY;
            most += known || least[i] < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        return most == 0 ? Double.POSITIVE_INFINITY : sum / most;
    }

    /**
     * Mean over what is known of the smaller of two squared shortfalls; where one is not known the other counts. Infinite as
     * soon as it is sure to reach {@code bar}.
     */
    private static double mean(double[] low, double[] high, double bar) {
        double enough = bar * low.length;
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < low.length; i++) {
            double smaller = high[i] < low[i] || Double.isNaN(low[i]) ? high[i] : low[i];
            if (smaller < Double.POSITIVE_INFINITY) {
                sum += smaller;
                counted++;
                if (sum > enough) {
                    return Double.POSITIVE_INFINITY;
                }
            }
        }
        return counted == 0 ? Double.POSITIVE_INFINITY : sum / counted;
    }
}
