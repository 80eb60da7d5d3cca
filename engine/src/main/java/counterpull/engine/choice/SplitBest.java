package counterpull.engine.choice;

import java.util.ArrayList;
import java.util.List;

/** The best pairs of a split range so far, best first; of equal ones the first found. */
final class SplitBest {
    private static final int KEPT = 64;
    private static final double TIE = 1e-12;
    private final List<SplitSetup> pairs = new ArrayList<>();

    List<SplitSetup> pairs() {
        return List.copyOf(pairs);
    }

    /** The mean squared shortfall that a pair must come under to be kept. */
    double bar() {
        if (pairs.size() < KEPT) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = pairs.get(pairs.size() - 1).shortfall();
        return worst * worst;
    }

    void keep(SplitSetup pair) {
        int at = pairs.size();
        while (at > 0 && pair.shortfall() < pairs.get(at - 1).shortfall() - TIE) {
            at--;
        }
        pairs.add(at, pair);
        if (pairs.size() > KEPT) {
            pairs.remove(pairs.size() - 1);
        }
    }
}
