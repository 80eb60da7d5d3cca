package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The moments of one floor in closed form against the sum over a fine grid. */
class FloorSiteCrosscheckTest {
    /** Mean and variance of N(mean, variance) × the floor's weight. */
    private static double[] summed(double floor, double noise, double mean, double variance) {
        double sd = Math.sqrt(variance);
        double tight = Math.sqrt(variance * noise / (variance + noise));
        double low = Math.min(mean - 12 * sd, (mean * noise + floor * variance) / (noise + variance) - 12 * tight);
        double high = Math.max(mean + 12 * sd, floor + 12 * sd);
        int steps = 400_000;
        double step = (high - low) / steps;
        double best = Double.NEGATIVE_INFINITY;
        double[] logs = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            double f = low + i * step;
            double short1 = Math.max(0, floor - f);
            logs[i] = -(f - mean) * (f - mean) / (2 * variance) - short1 * short1 / (2 * noise);
            best = Math.max(best, logs[i]);
        }
        double mass = 0;
        double first = 0;
        for (int i = 0; i <= steps; i++) {
            double weight = Math.exp(logs[i] - best);
            mass += weight;
            first += weight * (low + i * step);
        }
        double centre = first / mass;
        double second = 0;
        for (int i = 0; i <= steps; i++) {
            double away = low + i * step - centre;
            second += Math.exp(logs[i] - best) * away * away;
        }
        return new double[] {centre, second / mass};
    }

    /** The moments that the reading gives: two normals multiplied. */
    private static double[] matched(FloorSite site, double mean, double variance) {
        double both = 1 / (1 / variance + 1 / site.variance());
        return new double[] {both * (mean / variance + site.mean() / site.variance()), both};
    }

    @Test
    void theReadingGivesTheMomentsOfTheGrid() {
        Random random = new Random(2001);
        for (int trial = 0; trial < 150; trial++) {
            double mean = random.nextDouble() - 0.5;
            double variance = Math.pow(0.05 + 0.5 * random.nextDouble(), 2);
            double noise = Math.pow(0.02 + 0.3 * random.nextDouble(), 2);
            double floor = mean + (random.nextDouble() * 9 - 4) * Math.sqrt(variance);
            double[] exact = summed(floor, noise, mean, variance);
            double[] ours = matched(FloorSite.of(floor, noise, mean, variance), mean, variance);
            assertThat(ours[0])
                    .as("mean; the grid's steps are below 1e-4 of the narrower spread and the weight is smooth")
                    .isCloseTo(exact[0], within(1e-9 * Math.sqrt(variance)));
            assertThat(ours[1] / exact[1]).as("variance").isCloseTo(1, within(1e-7));
        }
    }

    @Test
    void itNeverSaysMoreThanAReachedTestNorPullsDown() {
        Random random = new Random(36);
        for (int trial = 0; trial < 20_000; trial++) {
            double mean = random.nextDouble() - 0.5;
            double variance = Math.pow(10, -12 + 12 * random.nextDouble());
            double noise = Math.pow(10, -12 + 12 * random.nextDouble());
            double floor = mean + 8 * (random.nextDouble() - 0.5);
            FloorSite site = FloorSite.of(floor, noise, mean, variance);
            assertThat(site.mean()).isFinite().isGreaterThanOrEqualTo(mean);
            assertThat(site.variance()).isFinite().isGreaterThanOrEqualTo(noise);
        }
    }

    @Test
    void farAboveBeliefItIsAReachedTestAndFarBelowItIsSilent() {
        FloorSite above = FloorSite.of(3, 0.01, 0, 0.04);
        assertThat(above.mean()).as("the half above the floor weighs e⁻⁹⁰").isCloseTo(3, within(1e-9));
        assertThat(above.variance()).isCloseTo(0.01, within(1e-9));
        FloorSite below = FloorSite.of(-3, 0.01, 0, 0.04);
        assertThat(below.variance()).isGreaterThan(1e15);
    }
}
