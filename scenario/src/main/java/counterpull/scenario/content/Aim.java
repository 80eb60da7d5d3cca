package counterpull.scenario.content;

import java.util.Optional;

/**
 * What is wanted of an exercise and what must not be passed, as far as it is stated.
 *
 * @param target effort along the range; empty where none is wanted
 * @param plan sets and repetitions; stated together with the target
 * @param bounds hard limits
 */
public record Aim(Optional<Target> target, Optional<Plan> plan, Bounds bounds) {
    /** Nothing stated. */
    public static Aim none() {
        return new Aim(Optional.empty(), Optional.empty(), Bounds.none());
    }
}
