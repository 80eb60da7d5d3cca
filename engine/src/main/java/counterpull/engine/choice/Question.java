package counterpull.engine.choice;

import counterpull.engine.profile.PressTask;
import java.util.List;

/**
 * What the search is asked.
 *
 * @param task person, sled, way of pushing and tempo; pressure point and hip shift of its stance; its loading is today's and
 *     is not used
 * @param goal target and limits
 * @param kit what is on hand
 * @param strategies which ways to shape the challenge to look for
 */
public record Question(PressTask task, Goal goal, Kit kit, List<Strategy> strategies) {
    public Question {
        strategies = List.copyOf(strategies);
    }
}
