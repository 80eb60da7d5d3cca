package counterpull.bench.repetitions;

import java.util.List;

/**
 * The same joint action of the limbs that take part: what one side has, the other has too but for a little, so that part of the
 * uncertainty is shared.
 *
 * @param sides one or two
 * @param sharedSd standard deviation of the log scale that both share; 0 for one alone
 */
record Pair(List<Contestant> sides, double sharedSd) {
    Pair {
        sides = List.copyOf(sides);
    }
}
