package counterpull.bench.person;

import counterpull.bench.Estimate;
import counterpull.engine.strength.IsometricTest;
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
