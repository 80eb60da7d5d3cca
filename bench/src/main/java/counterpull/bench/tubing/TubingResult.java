package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.engine.elastic.Rubber;
import java.util.List;
import java.util.Optional;

/**
 * What the readings of one piece say.
 *
 * @param rubber the piece as the engine takes it: law, what it loses, tested length; mass and hardware 0, since the bench did not see them
 * @param laws every kind that was tried
 * @param chosen the kind that is used
 * @param why it is used, in words
 * @param band of force against length, never past the tested length
 * @param lengths natural length, and what the test left of it
 * @param loss where letting go was read
 * @param softening where the first stretch was read apart
 */
public record TubingResult(
        Rubber rubber,
        List<Candidate> laws,
        Family chosen,
        String why,
        Band band,
        Lengths lengths,
        Optional<Loss> loss,
        Optional<Softening> softening) {
    /**
     * The piece without pull.
     *
     * @param tape natural length as the tape says, m
     * @param fitted natural length as tape and pull together say, m: where the curve starts
     * @param set share by which it stayed longer after the test, where that was measured
     */
    public record Lengths(Estimate tape, Estimate fitted, Optional<Estimate> set) {}

    public TubingResult {
        laws = List.copyOf(laws);
    }

    /** The kind that is used. */
    public Candidate law() {
        return laws.stream().filter(each -> each.family() == chosen).findFirst().orElseThrow();
    }
}
