package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import java.time.LocalDate;

/**
 * What one bench test left in the record of a piece. Comparable with another only at the same length.
 *
 * @param on date of the test
 * @param natural length, m
 * @param length at which the forces of all tests are compared, m
 * @param force of one strand there, N
 */
public record WearTest(LocalDate on, Estimate natural, double length, Estimate force) {
    /** From a bench's result; a refusal where the length lies past what was tested that day. */
    public static WearTest of(LocalDate on, TubingResult result, double length) {
        return new WearTest(on, result.lengths().tape(), length, result.band().force(length));
    }
}
