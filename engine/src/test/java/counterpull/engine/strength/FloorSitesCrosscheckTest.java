package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Floors at several angles against brute force: a grid over two log ratios, weighed samples of more. */
class FloorSitesCrosscheckTest {
    private static final PublishedCurve GIVEN =
            PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.FEMALE, 45, 66, 1.68));
    private static final Spread SPREAD = new Spread(GIVEN, GIVEN.assumptions());
    private static final double ELSEWHERE = 0.9;

    private static LogReading drawn(Random random, double mostSd) {
        double angle = Math.toRadians(10 + 100 * random.nextDouble());
        double sd = Math.sqrt(SPREAD.covariance(angle, angle));
        double relative = 0.03 + 0.15 * random.nextDouble();
        return new LogReading(angle, sd * mostSd * (2 * random.nextDouble() - 1), Math.log(1 + relative * relative));
    }

    private static Posterior ours(List<LogReading> reached, List<LogReading> floors) {
        List<LogReading> all = new ArrayList<>(reached);
        all.addAll(FloorSites.inPlaceOf(floors, new Posterior(SPREAD, reached)));
        return new Posterior(SPREAD, all);
    }

    /** The logarithm of what one reading weighs a log ratio by. */
    private interface Weight {
        double log(double logRatio);

        static Weight reached(LogReading reading) {
            return f -> -(f - reading.value()) * (f - reading.value()) / (2 * reading.noise());
        }

        static Weight floor(LogReading reading) {
            return f -> reached(reading).log(Math.min(f, reading.value()));
        }
    }

    /** Sums over draws of the prior at some angles: mean and variance at each and at one angle more. */
    private static final class Sums {
        private final double[] angle;
        private final Cholesky cholesky;
        private final double[][] root;
        private final double[] toElsewhere;
        private final double leftElsewhere;
        private final List<double[]> values = new ArrayList<>();
        private final List<Double> logs = new ArrayList<>();

        Sums(List<LogReading> readings) {
            angle = readings.stream().mapToDouble(LogReading::angle).toArray();
            double[][] prior = new double[angle.length][angle.length];
            double[] shared = new double[angle.length];
            for (int i = 0; i < angle.length; i++) {
                shared[i] = SPREAD.covariance(angle[i], ELSEWHERE);
                for (int j = 0; j < angle.length; j++) {
                    prior[i][j] = SPREAD.covariance(angle[i], angle[j]);
                }
            }
            root = root(prior);
            cholesky = new Cholesky(prior);
            toElsewhere = cholesky.solve(shared);
            double left = SPREAD.covariance(ELSEWHERE, ELSEWHERE);
            for (int i = 0; i < angle.length; i++) {
                left -= toElsewhere[i] * shared[i];
            }
            leftElsewhere = left;
        }

        private static double[][] root(double[][] matrix) {
            int size = matrix.length;
            double[][] root = new double[size][size];
            for (int i = 0; i < size; i++) {
                for (int j = 0; j <= i; j++) {
                    double rest = matrix[i][j];
                    for (int k = 0; k < j; k++) {
                        rest -= root[i][k] * root[j][k];
                    }
                    root[i][j] = i == j ? Math.sqrt(rest) : rest / root[j][j];
                }
            }
            return root;
        }

        void add(double[] normal, double logShare, List<Weight> weights) {
            double[] value = new double[normal.length + 1];
            double log = logShare;
            for (int i = 0; i < normal.length; i++) {
                for (int j = 0; j <= i; j++) {
                    value[i] += root[i][j] * normal[j];
                }
                log += weights.get(i).log(value[i]);
                value[normal.length] += toElsewhere[i] * value[i];
            }
            values.add(value);
            logs.add(log);
        }

        /** {mean, variance} at the i-th angle, or elsewhere at the end. */
        double[] moments(int which) {
            double best = logs.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
            double mass = 0;
            double first = 0;
            double second = 0;
            for (int i = 0; i < values.size(); i++) {
                double weight = Math.exp(logs.get(i) - best);
                double value = values.get(i)[which];
                mass += weight;
                first += weight * value;
                second += weight * value * value;
            }
            double mean = first / mass;
            double variance = second / mass - mean * mean;
            return new double[] {mean, variance + (which == angle.length ? leftElsewhere : 0)};
        }

        double angle(int which) {
            return which == angle.length ? ELSEWHERE : angle[which];
        }
    }

    private static Sums grid(List<LogReading> two, List<Weight> weights, double step) {
        Sums sums = new Sums(two);
        for (double u = -7; u <= 7; u += step) {
            for (double w = -7; w <= 7; w += step) {
                double log = -(u * u + w * w) / 2;
                sums.add(new double[] {u, w}, log, weights);
            }
        }
        return sums;
    }

    /** How far ours may be: the mean in the exact standard deviations, the standard deviation as a share. */
    private record Bounds(double mean, double tooWide, double tooNarrow) {}

    private static void compare(Posterior ours, Sums exact, Bounds bounds) {
        for (int i = 0; i <= exact.angle.length; i++) {
            double[] moments = exact.moments(i);
            double sd = Math.sqrt(moments[1]);
            double at = exact.angle(i);
            assertThat((ours.mean(at) - moments[0]) / sd)
                    .as("mean at %s rad", at)
                    .isCloseTo(0, within(bounds.mean));
            assertThat(Math.sqrt(ours.covariance(at, at)) / sd)
                    .as("standard deviation at %s rad", at)
                    .isBetween(1 - bounds.tooNarrow, 1 + bounds.tooWide);
        }
    }

    @Test
    void aFloorAndAReachedTestAreExact() {
        Random random = new Random(314);
        for (int trial = 0; trial < 12; trial++) {
            LogReading floor = drawn(random, 2);
            LogReading test = drawn(random, 1.5);
            Sums exact = grid(List.of(floor, test), List.of(Weight.floor(floor), Weight.reached(test)), 0.025);
            // the grid's step is a sixth of the narrowest weight or less: its sum of a smooth weight is good to 1e-5
            compare(ours(List.of(test), List.of(floor)), exact, new Bounds(1e-5, 1e-5, 1e-5));
        }
    }

    @Test
    void twoFloorsAreNear() {
        Random random = new Random(2718);
        for (int trial = 0; trial < 25; trial++) {
            LogReading one = drawn(random, 2);
            LogReading other = drawn(random, 2);
            Sums exact = grid(List.of(one, other), List.of(Weight.floor(one), Weight.floor(other)), 0.05);
            // what matching one by one costs with two floors up to two standard deviations above belief
            compare(ours(List.of(), List.of(one, other)), exact, new Bounds(0.04, 0.01, 0.12));
        }
    }

    /** The same with four floors and a reached test, by samples of the prior weighed by all five. */
    @Test
    void fourFloorsAndAReachedTestAreNear() {
        Random random = new Random(57721);
        for (int trial = 0; trial < 6; trial++) {
            List<LogReading> floors = new ArrayList<>();
            LogReading test = drawn(random, 1);
            for (int i = 0; i < 4; i++) {
                floors.add(drawn(random, 1.3));
            }
            List<LogReading> all = new ArrayList<>(floors);
            all.add(test);
            List<Weight> weights =
                    new ArrayList<>(floors.stream().map(Weight::floor).toList());
            weights.add(Weight.reached(test));
            Sums sampled = new Sums(all);
            for (int i = 0; i < 150_000; i++) {
                sampled.add(normals(random, 5), 0, weights);
            }
            // 150 000 samples leave some thousands in effect: 0.02 standard deviations of the mean, 2 % of the width
            compare(ours(List.of(test), floors), sampled, new Bounds(0.05, 0.03, 0.1));
        }
    }

    private static double[] normals(Random random, int count) {
        double[] normals = new double[count];
        for (int i = 0; i < count; i++) {
            normals[i] = random.nextGaussian();
        }
        return normals;
    }
}
