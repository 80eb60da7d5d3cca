package counterpull.bench.repetitions;

import java.util.ArrayList;
import java.util.List;

/**
 * Which joint limited, and how strong each is, after a set has shown about how large the largest effort is.
 *
 * <p>u = log effort as the curves stand − a, a the unknown log scale of each strength, normal about 0. The set sees M = max u with an
 * error. Density of M = Σ over who reaches it × chance that all others lie below; so every marginal moment of a is one integral over M
 * (and one over what two sides share inside it), summed over equal steps: no sampling.
 */
final class Contest {
    private static final double REACH = 7;
    private static final double STEPS_IN_SD = 1.5;
    private static final int MOST_STEPS = 40_000;

    private final List<Pair> pairs;
    private final PairMoments[] moments;
    private final Sighting seen;

    private double total;
    private final double[][] first;
    private final double[][] second;
    private final double[][] limiting;

    private Contest(List<Pair> pairs, Sighting seen) {
        this.pairs = List.copyOf(pairs);
        this.seen = seen;
        moments = new PairMoments[pairs.size()];
        first = new double[pairs.size()][];
        second = new double[pairs.size()][];
        limiting = new double[pairs.size()][];
        for (int g = 0; g < moments.length; g++) {
            moments[g] = new PairMoments(pairs.get(g));
            int sides = pairs.get(g).sides().size();
            first[g] = new double[sides];
            second[g] = new double[sides];
            limiting[g] = new double[sides];
        }
    }

    /**
     * Posterior of one joint action of one limb.
     *
     * @param mean of its log scale: above 0 is stronger than the curve as it stands
     * @param variance of its log scale
     * @param limiting chance that it was the one that limited
     */
    record Posterior(double mean, double variance, double limiting) {}

    /** Posteriors in the order of pairs and of sides in each. */
    static List<List<Posterior>> settle(List<Pair> pairs, Sighting seen) {
        Contest contest = new Contest(pairs, seen);
        contest.integrate();
        return contest.posteriors();
    }

    private void integrate() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double narrowest = seen.sd();
        for (Pair pair : pairs) {
            for (Contestant side : pair.sides()) {
                double sd = Math.hypot(side.ownSd(), pair.sharedSd());
                low = Math.min(low, side.logEffort() - REACH * sd);
                high = Math.max(high, side.logEffort() + REACH * sd);
                narrowest = Math.min(narrowest, side.ownSd());
            }
        }
        low = Math.min(low, seen.middle() - REACH * seen.sd());
        high = Math.max(high, seen.middle() + REACH * seen.sd());
        int steps = (int) Math.min(MOST_STEPS, Math.ceil((high - low) / (narrowest / STEPS_IN_SD)));
        for (int i = 0; i <= steps; i++) {
            add(low + (high - low) * i / steps);
        }
    }

    private void add(double m) {
        double seenHere = seen.likelihood(m);
        if (seenHere == 0) {
            return;
        }
        for (PairMoments pair : moments) {
            pair.at(m);
        }
        for (int g = 0; g < moments.length; g++) {
            double others = seenHere * belowBut(g, g);
            double another = 0;
            for (int h = 0; h < moments.length; h++) {
                another += h == g ? 0 : reach(h) * belowBut(g, h);
            }
            addPair(g, others, seenHere * another);
        }
    }

    private void addPair(int g, double others, double another) {
        PairMoments pair = moments[g];
        for (int i = 0; i < pair.reach.length; i++) {
            total += others * pair.reach[i];
            limiting[g][i] += others * pair.reach[i];
            first[g][i] += another * pair.belowFirst[i];
            second[g][i] += another * pair.belowSecond[i];
            for (int who = 0; who < pair.reach.length; who++) {
                first[g][i] += others * pair.reachFirst[who][i];
                second[g][i] += others * pair.reachSecond[who][i];
            }
        }
    }

    private double reach(int pair) {
        double sum = 0;
        for (double each : moments[pair].reach) {
            sum += each;
        }
        return sum;
    }

    private double belowBut(int one, int other) {
        double product = 1;
        for (int g = 0; g < moments.length; g++) {
            product *= g == one || g == other ? 1 : moments[g].below;
        }
        return product;
    }

    private List<List<Posterior>> posteriors() {
        List<List<Posterior>> all = new ArrayList<>();
        for (int g = 0; g < moments.length; g++) {
            List<Posterior> sides = new ArrayList<>();
            for (int i = 0; i < first[g].length; i++) {
                double mean = first[g][i] / total;
                double variance = second[g][i] / total - mean * mean;
                double logEffort = pairs.get(g).sides().get(i).logEffort();
                sides.add(new Posterior(logEffort - mean, variance, limiting[g][i] / total));
            }
            all.add(sides);
        }
        return all;
    }
}
