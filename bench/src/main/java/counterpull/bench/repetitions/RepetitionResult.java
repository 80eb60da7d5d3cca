package counterpull.bench.repetitions;

import counterpull.bench.Estimate;
import java.util.List;

/**
 * What a set says.
 *
 * @param of the set
 * @param toFailure repetitions to failure
 * @param share of the most that can be lifted once which the setup asks, with everything that makes it uncertain; where the set only says that,
 *     the most that it can be
 * @param joints each joint action of each limb that is asked, likeliest to have limited first
 */
public record RepetitionResult(
        RepetitionBench of, SetEnd.ToFailure toFailure, Estimate share, List<JointEvidence> joints) {
    public RepetitionResult {
        joints = List.copyOf(joints);
    }

    /** Whether the set only says what the largest effort is at most: something else ended it, or failure lies past what repetitions tell. */
    public boolean onlyAtMost() {
        return of.onlyAtMost(toFailure);
    }
}
