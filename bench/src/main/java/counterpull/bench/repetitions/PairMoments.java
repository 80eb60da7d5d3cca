package counterpull.bench.repetitions;

/**
 * At one value m of the largest log effort: how a pair lies below m, and how one of its sides reaches m, with first and second moments
 * of each side's log effort, none divided by its weight. Side effects stay inside: one instance is filled anew for each m.
 *
 * <p>Given the shared part, the sides are independent normals; the shared part is summed over equal steps, which for such smooth
 * bells is exact but for e^(−2π²(sd/step)²).
 */
final class PairMoments {
    private static final double REACH = 7;
    private static final double STEPS_IN_SD = 1.3;

    private final Pair pair;
    private final int sides;
    private final double step;
    private final int half;

    double below;
    final double[] belowFirst;
    final double[] belowSecond;
    final double[] reach;
    final double[][] reachFirst;
    final double[][] reachSecond;

    PairMoments(Pair pair) {
        this.pair = pair;
        sides = pair.sides().size();
        double narrowest = pair.sharedSd();
        for (Contestant side : pair.sides()) {
            narrowest = Math.min(narrowest, side.ownSd());
        }
        boolean shared = pair.sharedSd() > 0;
        step = shared ? narrowest / STEPS_IN_SD : 1;
        half = shared ? (int) Math.ceil(REACH * pair.sharedSd() / step) : 0;
        belowFirst = new double[sides];
        belowSecond = new double[sides];
        reach = new double[sides];
        reachFirst = new double[sides][sides];
        reachSecond = new double[sides][sides];
    }

    void at(double m) {
        clear();
        for (int i = -half; i <= half; i++) {
            double shared = i * step;
            double weight = half == 0 ? 1 : Normal.density(shared / pair.sharedSd()) * step / pair.sharedSd();
            add(m, shared, weight);
        }
    }

    private void clear() {
        below = 0;
        for (int i = 0; i < sides; i++) {
            belowFirst[i] = 0;
            belowSecond[i] = 0;
            reach[i] = 0;
            for (int k = 0; k < sides; k++) {
                reachFirst[i][k] = 0;
                reachSecond[i][k] = 0;
            }
        }
    }

    private void add(double m, double shared, double weight) {
        Side[] each = new Side[sides];
        double all = weight;
        for (int i = 0; i < sides; i++) {
            each[i] = Side.of(pair.sides().get(i), shared, m);
            all *= each[i].below;
        }
        below += all;
        for (int i = 0; i < sides; i++) {
            double others = weight * productBut(each, i, i);
            belowFirst[i] += others * each[i].first;
            belowSecond[i] += others * each[i].second;
            double at = others * each[i].density;
            reach[i] += at;
            reachFirst[i][i] += at * m;
            reachSecond[i][i] += at * m * m;
            for (int k = 0; k < sides; k++) {
                if (k != i) {
                    double rest = weight * each[i].density * productBut(each, i, k);
                    reachFirst[i][k] += rest * each[k].first;
                    reachSecond[i][k] += rest * each[k].second;
                }
            }
        }
    }

    private static double productBut(Side[] each, int one, int other) {
        double product = 1;
        for (int i = 0; i < each.length; i++) {
            product *= i == one || i == other ? 1 : each[i].below;
        }
        return product;
    }

    /** One side given the shared part: density at m, chance below m, first and second moment of what lies below. */
    private record Side(double density, double below, double first, double second) {
        static Side of(Contestant of, double shared, double m) {
            double mean = of.logEffort() - shared;
            double sd = of.ownSd();
            double z = (m - mean) / sd;
            double bell = Normal.density(z);
            double below = Normal.below(z);
            return new Side(
                    bell / sd,
                    below,
                    mean * below - sd * bell,
                    (mean * mean + sd * sd) * below - sd * (m + mean) * bell);
        }
    }
}
