package counterpull.scenario.write;

import counterpull.engine.body.Action;
import counterpull.scenario.content.Aim;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Plan;
import counterpull.scenario.content.Target;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.Arrays;
import java.util.List;

/** Writes target, plan and limits. */
final class WantedWriter {
    private WantedWriter() {}

    static Out target(Target target, Plan plan) {
        Out out = new Out()
                .putGroups(
                        "effort at knee angles",
                        target.points(),
                        point -> new Out()
                                .put("knee", point.knee(), Dimension.ANGLE)
                                .put("effort", point.effort(), Dimension.RATIO))
                .put("ceiling", target.ceiling(), Dimension.RATIO)
                .put("least force", target.leastForce(), Dimension.FORCE)
                .put("joints", target.joints(), Words.JOINT::word);
        return plan(out, plan);
    }

    private static Out plan(Out out, Plan plan) {
        return out.put("sets", plan.sets())
                .put("repetitions", plan.repetitions())
                .put("repetitions left", plan.repetitionsLeft())
                .put("rest", plan.rest(), Dimension.TIME);
    }

    /** Target and limits of an exercise, as far as they are stated. */
    static void aim(Aim aim, Out out) {
        if (aim.target().isPresent() && aim.plan().isPresent()) {
            Target target = aim.target().get();
            out.put(
                    "target",
                    plan(
                            new Out()
                                    .put("effort", target.points().get(0).effort(), Dimension.RATIO)
                                    .put("ceiling", target.ceiling(), Dimension.RATIO)
                                    .put("joints", target.joints(), Words.JOINT::word),
                            aim.plan().get()));
        }
        Bounds bounds = aim.bounds();
        out.put(
                "limits",
                new Out()
                        .putGroups("torque", limited(bounds), action -> torque(bounds, action))
                        .putStated("kneecap stress", bounds.kneecapStress(), Dimension.STRESS));
    }

    static Out limits(Bounds bounds) {
        return new Out()
                .putGroups("torque", limited(bounds), action -> torque(bounds, action))
                .putStated("kneecap stress", bounds.kneecapStress(), Dimension.STRESS)
                .putStated("force at the turn", bounds.turnForce(), Dimension.FORCE)
                .putStated("uneven sides", bounds.unevenSides(), Dimension.MASS)
                .put("hold for", Words.STRAYING.word(bounds.straying()));
    }

    private static List<Action> limited(Bounds bounds) {
        return Arrays.stream(Action.values())
                .filter(bounds.torque()::containsKey)
                .toList();
    }

    private static Out torque(Bounds bounds, Action action) {
        return new Out()
                .put("action", Words.ACTION.word(action))
                .put("at most", bounds.torque().get(action), Dimension.TORQUE);
    }
}
