package counterpull.bench.tubing;

import java.util.List;

/**
 * The readings of one test, in the order in which they were noted.
 *
 * @param stretching while it was made longer
 * @param lettingGo while it was let go; may be empty
 * @param firstStretch of the very first pull of a fresh or rested piece, if it was noted apart; may be empty
 */
public record Pulls(List<Pull> stretching, List<Pull> lettingGo, List<Pull> firstStretch) {
    public Pulls {
        stretching = List.copyOf(stretching);
        lettingGo = List.copyOf(lettingGo);
        firstStretch = List.copyOf(firstStretch);
    }

    /** Only stretching. */
    public static Pulls stretching(List<Pull> pulls) {
        return new Pulls(pulls, List.of(), List.of());
    }
}
