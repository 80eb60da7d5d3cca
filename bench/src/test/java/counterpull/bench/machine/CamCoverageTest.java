package counterpull.bench.machine;

import counterpull.bench.Coverage;
import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Made-up cams, read with noise: the band of the radius holds the truth as often as it says, at each angle. */
class CamCoverageTest {
    private static final int TRIALS = Coverage.trials(40);
    private static final double LOW = Math.toRadians(-90);
    private static final double HIGH = Math.toRadians(20);
    private static final double[] LOOKS = {0.05, 0.4, 0.83};

    /** Line drawn in and radius of a cam whose radius waves once or less over its range. */
    private record Truth(double round, double wave, double rate, double phase) {
        static Truth of(Random random) {
            double round = 0.07 + 0.08 * random.nextDouble();
            return new Truth(
                    round,
                    0.3 * round * random.nextDouble(),
                    0.8 + 1.2 * random.nextDouble(),
                    2 * Math.PI * random.nextDouble());
        }

        double radius(double angle) {
            return round + wave * Math.cos(rate * angle + phase);
        }

        double line(double angle) {
            return round * angle + wave / rate * Math.sin(rate * angle + phase);
        }
    }

    private static double angle(double share) {
        return LOW + (HIGH - LOW) * share;
    }

    private static void count(Coverage coverage, String words, CamFound found, DoubleUnaryOperator radius) {
        for (double share : LOOKS) {
            double at = angle(share);
            coverage.count(words + "radius at " + share, found.radius(at), radius.applyAsDouble(at));
        }
    }

    private static void travel(int angles, int times, boolean stated) {
        Coverage coverage = new Coverage(TRIALS);
        for (double noise : new double[] {0.0005, 0.001, 0.002}) {
            String words = angles + " angles x " + times + ", tape " + noise + (stated ? " stated: " : ": ");
            for (int trial = 0; trial < TRIALS; trial++) {
                Random random = Coverage.random(words, trial);
                Truth truth = Truth.of(random);
                List<CamTravel> travels = new ArrayList<>();
                for (int i = 0; i < angles; i++) {
                    double at = angle(i / (angles - 1.0));
                    for (int k = 0; k < times; k++) {
                        travels.add(new CamTravel(at, truth.line(at) + noise * random.nextGaussian()));
                    }
                }
                Noise tape = stated ? new Noise.Stated(noise) : new Noise.FromScatter();
                CamFound found = new CamTravelBench("cam", travels, LeverHold.Turn.COUNTERCLOCKWISE, tape)
                        .answer()
                        .result()
                        .orElse(null);
                if (found == null) {
                    continue;
                }
                count(coverage, words, found, truth::radius);
            }
        }
        coverage.holds();
    }

    @Test
    void fiveAnglesWithATapeThatIsKnown() {
        travel(5, 1, true);
    }

    @Test
    void fiveAnglesThreeTimes() {
        travel(5, 3, false);
    }

    @Test
    void elevenAnglesOnce() {
        travel(11, 1, false);
    }

    @Test
    void byTorque() {
        Coverage coverage = new Coverage(TRIALS);
        for (double noise : new double[] {0.3, 1, 3}) {
            String words = "6 angles by torque, noise " + noise + ": ";
            for (int trial = 0; trial < TRIALS; trial++) {
                Random random = Coverage.random(words, trial);
                Truth truth = Truth.of(random);
                double mass = 50;
                double ratio = 1;
                List<Seen> readings = new ArrayList<>();
                for (int i = 0; i < 6; i++) {
                    double at = angle(i / 5.0);
                    for (Way way : Way.values()) {
                        double torque = truth.radius(at) * mass * 9.80665 / ratio * (1 + way.sense() * 0.06);
                        for (int k = 0; k < 2; k++) {
                            readings.add(new Seen(way, at, torque + noise * random.nextGaussian()));
                        }
                    }
                }
                Estimate weighed = Estimate.normal(mass * (1 + 0.02 * random.nextGaussian()), 0.02 * mass);
                Estimate measured = Estimate.normal(ratio * (1 + 0.01 * random.nextGaussian()), 0.01 * ratio);
                CamFound found = new CamTorqueBench("cam", readings, weighed, measured, new Noise.FromScatter())
                        .answer()
                        .result()
                        .orElse(null);
                if (found == null) {
                    continue;
                }
                count(coverage, words, found, truth::radius);
            }
        }
        coverage.holds();
    }
}
