package counterpull.bench.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two routes to one number, seeded. */
class TraceCrosscheckTest {
    private static final int TRIALS = Boolean.getBoolean("long") ? 2000 : 200;

    private static Trace random(Random random) {
        int n = 30 + random.nextInt(60);
        double[] times = new double[n];
        double[] forces = new double[n];
        for (int i = 1; i < n; i++) {
            times[i] = times[i - 1] + 0.02 + 0.1 * random.nextDouble();
            forces[i] = 400 * random.nextDouble();
        }
        return Trace.of(times, forces);
    }

    /** The exact best second against one looked for by tenths of a millisecond. */
    @Test
    void noSecondIsBetterThanTheBestSecond() {
        Random random = new Random(7_411);
        for (int trial = 0; trial < TRIALS / 4; trial++) {
            Trace trace = random(random);
            Plateau exact = BestSecond.in(trace, trace.begin(), trace.end());
            double searched = Double.NEGATIVE_INFINITY;
            for (double t = trace.begin(); t + 1 <= trace.end(); t += 1e-3) {
                searched = Math.max(searched, trace.mean(t, t + 1));
            }
            assertThat(exact.mean()).isGreaterThanOrEqualTo(searched - 1e-9);
            assertThat(exact.mean())
                    .as("the slope of the mean is at most 400 N/s, so half a millisecond off costs less than 0.2 N")
                    .isCloseTo(searched, within(0.2));
        }
    }

    /** The exact integral against the sum of many thin slices. */
    @Test
    void meansAndSpreadsAreThoseOfThinSlices() {
        Random random = new Random(90_210);
        for (int trial = 0; trial < TRIALS / 4; trial++) {
            Trace trace = random(random);
            double from = trace.end() * 0.4 * random.nextDouble();
            double to = from + trace.end() * (0.05 + 0.5 * random.nextDouble());
            int slices = 20_000;
            double sum = 0;
            double square = 0;
            for (int i = 0; i < slices; i++) {
                double force = trace.at(from + (to - from) * (i + 0.5) / slices);
                sum += force;
                square += force * force;
            }
            double mean = sum / slices;
            assertThat(trace.mean(from, to))
                    .as("a slice across a corner is off by its height times its share: below 0.01 N")
                    .isCloseTo(mean, within(0.01));
            assertThat(trace.spread(from, to, trace.mean(from, to)))
                    .isCloseTo(Math.sqrt(square / slices - mean * mean), within(0.02));
        }
    }

    /**
     * With noise, white or with neighbours correlated: the onset is never taken early by more than a twentieth of a second (the threshold is
     * three standard deviations and the walk back stops at the first sample below it), and the best second, being the best of many, lies above
     * the truth by no more than two standard errors of a one-second mean. No interval is claimed for it.
     */
    @Test
    void noiseMovesTheAnswersOnlySoFar() {
        Trace truth = Traces.even(Traces.corners(0, 20, 1, 20, 1.2, 400, 4.2, 400, 4.5, 20, 5, 20), 5, 200);
        Random random = new Random(31_337);
        for (double sd : new double[] {1, 4, 12}) {
            for (double rho : new double[] {0, 0.8}) {
                double[] onsets = new double[TRIALS];
                double[] plateaus = new double[TRIALS];
                for (int trial = 0; trial < TRIALS; trial++) {
                    Effort effort = TraceBench.of(Traces.noisy(truth, sd, rho, random))
                            .result()
                            .orElseThrow()
                            .best();
                    onsets[trial] = effort.onset().orElseThrow().time();
                    plateaus[trial] = effort.plateau().orElseThrow().mean();
                }
                assertOnsets(onsets, sd, rho);
                assertPlateaus(plateaus, sd, rho);
            }
        }
    }

    private static void assertOnsets(double[] onsets, double sd, double rho) {
        Arrays.sort(onsets);
        String which = "noise " + sd + " N, correlation " + rho;
        double ramp = (Math.max(3 * sd, 0.02 * 380) + 3 * sd) / (380 / 0.2);
        assertThat(onsets[0]).as(which + ": earliest").isGreaterThan(1 - 0.05);
        assertThat(onsets[onsets.length / 2])
                .as(which + ": the middle one lies on the ramp where the threshold is passed")
                .isBetween(1.0 - 0.005, 1 + ramp + 0.005);
    }

    private static void assertPlateaus(double[] plateaus, double sd, double rho) {
        double error = sd / Math.sqrt(200 * (1 - rho) / (1 + rho));
        double mean = Arrays.stream(plateaus).average().orElseThrow();
        String which = "noise " + sd + " N, correlation " + rho;
        assertThat(mean).as(which + ": the best is not below the truth").isGreaterThan(400 - 0.1 * error);
        assertThat(mean).as(which).isLessThan(400 + 2 * error);
    }
}
