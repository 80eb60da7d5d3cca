package counterpull.bench.repetitions;

import counterpull.bench.Estimate;
import counterpull.bench.Student;
import counterpull.engine.strength.IsometricTest;
import java.util.Optional;

/**
 * What a set says of one joint action of one limb.
 *
 * @param place where it was asked most
 * @param limiting chance that it was the one that gave out
 * @param shift of the log of its strength, from the curve as it stood: above 0 is stronger
 * @param sd standard deviation of that log strength after the set
 * @param test what a curve takes of it, as if it had been tested held still at that angle; empty where the set says nothing new of it
 */
public record JointEvidence(
        HardestPlace place, double limiting, double shift, double sd, Optional<IsometricTest> test) {
    /** What the curve gave held still at that angle before the set, N·m. */
    public double before() {
        return place.held();
    }

    /** Strength held still at that angle after the set, N·m. */
    public Estimate after() {
        double middle = before() * Math.exp(shift);
        double factor = Math.exp(Student.TWO_SIDED_95 * sd);
        return new Estimate(middle, middle * sd, middle / factor, middle * factor, Estimate.Standing.FREE);
    }

    /** Standard deviation of its log strength before the set. */
    public double sdBefore() {
        return place.logSd();
    }
}
