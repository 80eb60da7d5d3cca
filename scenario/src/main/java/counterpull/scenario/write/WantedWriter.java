package counterpull.scenario.write;

import counterpull.engine.body.Action;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Plan;
import counterpull.scenario.content.Target;
import counterpull.scenario.read.Words;
import counterpull.scenario.units.Dimension;
import java.util.Arrays;
import java.util.List;

/** Writes target, plan and limits. */
final class WantedWriter {
    private WantedWriter() {}

    static Out target(Target target, Plan plan) {
        return new Out()
                .putGroups(
                        "effort at knee angles",
                        target.points(),
                        point -> new Out()
                                .put("knee", point.knee(), Dimension.ANGLE)
                                .put("effort", point.effort(), Dimension.RATIO))
                .put("ceiling", target.ceiling(), Dimension.RATIO)
                .put("least force", target.leastForce(), Dimension.FORCE)
                .put("joints", target.joints(), Words.JOINT::word)
                .put("sets", plan.sets())
                .put("repetitions", plan.repetitions())
                .put("repetitions left", plan.repetitionsLeft())
                .put("rest", plan.rest(), Dimension.TIME);
    }

    static Out limits(Bounds bounds) {
        List<Action> limited = Arrays.stream(Action.values())
                .filter(bounds.torque()::containsKey)
                .toList();
        return new Out()
                .putGroups(
                        "torque",
                        limited,
                        action -> new Out()
                                .put("action", Words.ACTION.word(action))
                                .put("at most", bounds.torque().get(action), Dimension.TORQUE))
                .putStated("kneecap stress", bounds.kneecapStress(), Dimension.STRESS)
                .putStated("force at the turn", bounds.turnForce(), Dimension.FORCE)
                .putStated("uneven sides", bounds.unevenSides(), Dimension.MASS)
                .put("hold for", Words.STRAYING.word(bounds.straying()));
    }
}
