package counterpull.bench.machine;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Coverage;
import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Made-up machines of every bend, read with noise: the bands hold the truth as often as they say, at each position. */
class ProfileCoverageTest {
    private static final int TRIALS = Coverage.trials(40);
    private static final int MORE = Coverage.trials(200);
    private static final double[] NOISES = {1, 4, 10};
    private static final double[] LOOKS = {-1, -0.37, 0.5};

    private record Plan(int positions, int times, double noise, boolean stated) {
        String words() {
            return positions + " positions x " + times + ", noise " + noise + (stated ? " stated, " : ", ");
        }
    }

    private record Truth(DoubleUnaryOperator mean, DoubleUnaryOperator half) {}

    /** A machine's force over a range of 2: a lever's cosine and a cam's slower or faster wave on it; friction in two parts. */
    private static Truth truth(Random random) {
        double level = 150 + 150 * random.nextDouble();
        double lever = 0.4 * random.nextDouble() * level;
        double leverAt = 2 * Math.PI * random.nextDouble();
        double rate = 0.5 + 0.6 * random.nextDouble();
        double cam = 0.15 * random.nextDouble() * level;
        double camAt = 2 * Math.PI * random.nextDouble();
        double camRate = 1 + 1.5 * random.nextDouble();
        double constant = 10 + 10 * random.nextDouble();
        double share = 0.02 + 0.08 * random.nextDouble();
        DoubleUnaryOperator mean =
                x -> level + lever * Math.cos(x * rate + leverAt) + cam * Math.cos(x * camRate + camAt);
        return new Truth(mean, x -> constant + share * mean.applyAsDouble(x));
    }

    private static ProfileFound read(Plan plan, Truth truth, Random random) {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i < plan.positions; i++) {
            double at = -1 + 2.0 * i / (plan.positions - 1);
            for (Way way : Way.values()) {
                double expected = truth.mean.applyAsDouble(at) + way.sense() * truth.half.applyAsDouble(at);
                for (int k = 0; k < plan.times; k++) {
                    readings.add(new Seen(way, at, expected + plan.noise * random.nextGaussian()));
                }
            }
        }
        Noise noise = plan.stated ? new Noise.Stated(plan.noise) : new Noise.FromScatter();
        return new ProfileBench("machine", Quantity.FORCE_BY_TRAVEL, readings, noise)
                .answer()
                .result()
                .orElse(null);
    }

    private static void run(Plan plan, Coverage coverage) {
        for (int trial = 0; trial < TRIALS; trial++) {
            Random random = Coverage.random(plan.toString(), trial);
            Truth truth = truth(random);
            ProfileFound found = read(plan, truth, random);
            if (found == null) {
                continue;
            }
            for (double at : LOOKS) {
                double mean = truth.mean.applyAsDouble(at);
                double half = truth.half.applyAsDouble(at);
                coverage.count(plan.words() + "mean at " + at, found.mean(at), mean);
                coverage.count(plan.words() + "half at " + at, found.half(at), half);
                coverage.count(plan.words() + "up at " + at, found.way(Way.UP, at), mean + half);
            }
        }
    }

    private static void runAll(int positions, int times, boolean stated) {
        Coverage coverage = new Coverage(TRIALS);
        for (double noise : NOISES) {
            run(new Plan(positions, times, noise, stated), coverage);
        }
        coverage.holds();
    }

    @Test
    void threePositionsWithAScaleThatIsKnown() {
        runAll(3, 1, true);
    }

    @Test
    void threePositionsThreeTimes() {
        runAll(3, 3, false);
    }

    @Test
    void sevenPositionsOnce() {
        runAll(7, 1, false);
    }

    @Test
    void elevenPositionsTwice() {
        runAll(11, 2, false);
    }

    /** The control: a band six tenths as wide does not hold what it promises. */
    @Test
    void narrowBandsAreFoundOut() {
        Plan plan = new Plan(7, 1, 4, false);
        Coverage coverage = new Coverage(MORE);
        for (int trial = 0; trial < MORE; trial++) {
            Random random = Coverage.random(plan.toString(), trial);
            Truth truth = truth(random);
            Estimate mean = read(plan, truth, random).mean(0.5);
            coverage.count("mean", Math.abs(truth.mean.applyAsDouble(0.5) - mean.value()) < 0.6 * mean.halfWidth());
        }
        assertThat(coverage.share("mean")).isLessThan(0.88);
    }
}
