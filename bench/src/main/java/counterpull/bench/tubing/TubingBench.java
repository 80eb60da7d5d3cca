package counterpull.bench.tubing;

import counterpull.bench.Answer;
import java.util.Optional;

/**
 * Everything that was read of one piece of rubber on one day; as taken, nothing is checked here.
 *
 * @param piece what it was
 * @param natural length of one strand without pull, before
 * @param pulls lengths of one strand, forces of all together
 * @param instruments how sure scale and tape are
 * @param after natural length after the test, if it was measured again
 */
public record TubingBench(
        Piece piece, TapeReadings natural, Pulls pulls, Instruments instruments, Optional<TapeReadings> after) {
    /** What these readings say, or every reason why they say nothing. */
    public Answer<TubingResult> answer() {
        return TubingAnswer.of(this);
    }
}
