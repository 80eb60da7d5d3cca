package counterpull.bench.person;

import counterpull.bench.Estimate;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.IsometricTest.Meaning;
import java.util.List;

/**
 * What a strength test says.
 *
 * @param of the test
 * @param efforts the efforts as torques
 * @param log the torque that counts, with the uncertainty of its logarithm
 * @param tests what the engine's curve takes of it: a test, a floor, or both where an effort that was stopped passed those that reached
 */
public record StrengthResult(StrengthBench of, Efforts efforts, LogEstimate log, List<IsometricTest> tests) {
    /** Share of the variance between days that the tests of one day have in common: how somebody is that day, and who tests; ours. */
    private static final double OF_THE_DAY = 0.5;

    public StrengthResult {
        tests = List.copyOf(tests);
    }

    /**
     * Efforts as torques of the joint, N·m.
     *
     * @param torques every effort's, in order, limb weight taken out
     * @param reached mean and scatter of the logarithms of those that reached the most; the count is 0 where none did, and the mean then
     *     that of the highest that was stopped
     * @param limbWeight what was added to force × distance, N·m
     */
    public record Efforts(List<Double> torques, Scatter reached, double limbWeight) {
        public Efforts {
            torques = List.copyOf(torques);
        }
    }

    /**
     * The same where so many tests of this action and side, this one among them, were reached on that day. A curve counts its tests as
     * independent, but what a day and a tape have in common does not average out: each test is taken as so much less sure that
     * their mean is as unsure as it is. Formula: variance + (n − 1) × what they share. A floor stays as it is.
     */
    public List<IsometricTest> tests(int reachedThatDay) {
        return tests.stream().map(test -> beside(test, reachedThatDay - 1)).toList();
    }

    private IsometricTest beside(IsometricTest test, int others) {
        if (others < 1 || test.meaning() == Meaning.AT_LEAST) {
            return test;
        }
        double between = of.way().betweenDays(of.subject().action());
        double pad = of.setting().pad().relativeSd();
        double shared = OF_THE_DAY * between * between + pad * pad;
        double sd = Math.sqrt(test.relativeSd() * test.relativeSd() + others * shared);
        return new IsometricTest(test.angle(), test.torque(), Math.min(1, sd));
    }

    /** How many of these tests were reached, and so count as tests and not as floors alone. */
    public static int reached(List<StrengthResult> tests) {
        return (int) tests.stream().filter(test -> !test.floorOnly()).count();
    }

    /** Torque that counts, N·m, with its interval. */
    public Estimate torque() {
        return log.estimate();
    }

    /** The highest of all efforts, N·m. */
    public double best() {
        return efforts.torques.stream().mapToDouble(torque -> torque).max().orElseThrow();
    }

    /** Whether nothing reached the person's most, so that the torque is only a floor. */
    public boolean floorOnly() {
        return efforts.reached.count() == 0;
    }
}
