package counterpull.bench.repetitions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sums of {@link Contest} against drawing people from the prior and weighing them by what the set has shown. */
class ContestCrosscheckTest {
    private static final int DRAWS = Boolean.getBoolean("long") ? 4_000_000 : 300_000;

    private static Contestant side(double effort, double ownSd) {
        return new Contestant(Math.log(effort), ownSd);
    }

    private static final List<Pair> PRESS = List.of(
            new Pair(List.of(side(0.55, 0.08), side(0.60, 0.08)), 0.22),
            new Pair(List.of(side(0.50, 0.08), side(0.52, 0.15)), 0.20),
            new Pair(List.of(side(0.30, 0.25)), 0));

    @Test
    void nearlyTiedJointsOfTwoLimbs() {
        agrees(PRESS, new Sighting.Near(Math.log(0.75), 0.2), 11);
    }

    @Test
    void oneJointClearlyHardest() {
        agrees(
                List.of(new Pair(List.of(side(0.9, 0.25)), 0), new Pair(List.of(side(0.3, 0.25)), 0)),
                new Sighting.Near(Math.log(0.7), 0.15),
                12);
    }

    @Test
    void strongerThanThought() {
        agrees(PRESS, new Sighting.Near(Math.log(0.45), 0.18), 13);
    }

    @Test
    void aFloorAlone() {
        agrees(PRESS, new Sighting.AtMost(Math.log(0.5), 0.15), 14);
    }

    @Test
    void aSidedTestLeavesTheOtherSideOpen() {
        agrees(
                List.of(new Pair(List.of(side(0.6, 0.05), side(0.6, 0.25)), 0.0)),
                new Sighting.Near(Math.log(0.7), 0.17),
                15);
    }

    private static void agrees(List<Pair> pairs, Sighting seen, long seed) {
        List<List<Contest.Posterior>> ours = Contest.settle(pairs, seen);
        Drawn drawn = new Drawn(pairs, seen, seed);
        double chances = 0;
        for (int g = 0; g < pairs.size(); g++) {
            for (int i = 0; i < pairs.get(g).sides().size(); i++) {
                Contest.Posterior posterior = ours.get(g).get(i);
                double sd = Math.sqrt(posterior.variance());
                double error = sd / Math.sqrt(drawn.effective());
                assertThat(posterior.mean())
                        .as("mean of %d.%d: five standard errors of the draws", g, i)
                        .isCloseTo(drawn.mean(g, i), within(5 * error));
                assertThat(posterior.variance())
                        .as("variance of %d.%d: five of about √2 variance/√draws", g, i)
                        .isCloseTo(
                                drawn.variance(g, i),
                                within(5 * 2 * posterior.variance() / Math.sqrt(drawn.effective())));
                assertThat(posterior.limiting())
                        .as("chance of %d.%d: five times at most ½/√draws", g, i)
                        .isCloseTo(drawn.limiting(g, i), within(2.5 / Math.sqrt(drawn.effective())));
                chances += posterior.limiting();
            }
        }
        assertThat(chances).as("somebody limits; rounding of the sums").isCloseTo(1, within(1e-6));
    }

    /** Importance sampling from the prior. */
    private static final class Drawn {
        private final double[][] first;
        private final double[][] second;
        private final double[][] who;
        private double total;
        private double squares;

        Drawn(List<Pair> pairs, Sighting seen, long seed) {
            Random random = new Random(seed);
            first = new double[pairs.size()][2];
            second = new double[pairs.size()][2];
            who = new double[pairs.size()][2];
            double[][] a = new double[pairs.size()][2];
            for (int draw = 0; draw < DRAWS; draw++) {
                double most = Double.NEGATIVE_INFINITY;
                int byPair = 0;
                int bySide = 0;
                for (int g = 0; g < a.length; g++) {
                    double shared = pairs.get(g).sharedSd() * random.nextGaussian();
                    for (int i = 0; i < pairs.get(g).sides().size(); i++) {
                        Contestant side = pairs.get(g).sides().get(i);
                        a[g][i] = shared + side.ownSd() * random.nextGaussian();
                        if (side.logEffort() - a[g][i] > most) {
                            most = side.logEffort() - a[g][i];
                            byPair = g;
                            bySide = i;
                        }
                    }
                }
                weigh(a, seen.likelihood(most), byPair, bySide);
            }
        }

        private void weigh(double[][] a, double weight, int byPair, int bySide) {
            total += weight;
            squares += weight * weight;
            who[byPair][bySide] += weight;
            for (int g = 0; g < a.length; g++) {
                for (int i = 0; i < 2; i++) {
                    first[g][i] += weight * a[g][i];
                    second[g][i] += weight * a[g][i] * a[g][i];
                }
            }
        }

        double effective() {
            return total * total / squares;
        }

        double mean(int g, int i) {
            return first[g][i] / total;
        }

        double variance(int g, int i) {
            return second[g][i] / total - mean(g, i) * mean(g, i);
        }

        double limiting(int g, int i) {
            return who[g][i] / total;
        }
    }

    /** One joint, no doubt who limits: the product of two normals (textbook). */
    @Test
    void oneJointIsTheTextbooksNormalUpdate() {
        double before = 0.25 * 0.25;
        double noise = 0.2 * 0.2;
        Contest.Posterior found = Contest.settle(
                        List.of(new Pair(List.of(new Contestant(-0.5, 0.25)), 0)), new Sighting.Near(-0.3, 0.2))
                .get(0)
                .get(0);
        assertThat(found.mean()).isCloseTo(-0.2 * before / (before + noise), within(1e-9));
        assertThat(found.variance()).isCloseTo(1 / (1 / before + 1 / noise), within(1e-9));
    }

    /** The probit moments of a floor: m 0, v 0.0625, s 0.08, floor 0.10 give 0.2512461 and 0.02216621 (computed by quadrature). */
    @Test
    void aFloorIsTheProbitUpdate() {
        Contest.Posterior found = Contest.settle(
                        List.of(new Pair(List.of(new Contestant(0, 0.25)), 0)), new Sighting.AtMost(-0.10, 0.08))
                .get(0)
                .get(0);
        assertThat(found.mean()).isCloseTo(0.2512461, within(1e-6));
        assertThat(found.variance()).isCloseTo(0.02216621, within(1e-7));
    }

    /** What both sides share cannot be told apart from one joint with that spread, as their own part vanishes. */
    @Test
    void twoSidesAlikeAreOne() {
        Sighting seen = new Sighting.Near(-0.3, 0.2);
        Contest.Posterior one = Contest.settle(List.of(new Pair(List.of(new Contestant(-0.5, 0.25)), 0)), seen)
                .get(0)
                .get(0);
        Contestant own = new Contestant(-0.5, 0.005);
        Contest.Posterior two = Contest.settle(List.of(new Pair(List.of(own, own), 0.25)), seen)
                .get(0)
                .get(1);
        assertThat(two.mean())
                .as("0.004 is what the larger of two 0.5 % differs by")
                .isCloseTo(one.mean(), within(0.004));
        assertThat(two.limiting()).isCloseTo(0.5, within(1e-9));
    }
}
