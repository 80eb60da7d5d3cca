package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.STRESS;
import static counterpull.scenario.format.Measures.TORQUE;
import static counterpull.scenario.format.Measures.TURN_FORCE;
import static counterpull.scenario.format.Measures.UNEVEN;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.body.Action;
import counterpull.engine.choice.Goal.Straying;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Reads what must not be passed. */
final class LimitsReader {
    private static final double NOT_STATED = Double.POSITIVE_INFINITY;

    private LimitsReader() {}

    static Optional<Bounds> read(Fields top) {
        return top.has("limits")
                ? top.group("limits", Shapes.LIMITS).flatMap(LimitsReader::bounds)
                : Optional.of(Bounds.none());
    }

    static Optional<Bounds> bounds(Fields fields) {
        Map<Action, Double> torque = new EnumMap<>(Action.class);
        for (Fields limit : fields.optionalGroups("torque", Shapes.TORQUE_LIMIT, UP_TO_A_HUNDRED)) {
            Action action = limit.choice("action", Words.ACTION);
            double most = limit.required("at most", TORQUE);
            if (limit.isSound() && torque.put(action, most) != null) {
                limit.report(Code.CONTRADICTION, "action", "another limit is for this action", "Keep one");
            }
        }
        double stress = fields.orElse("kneecap stress", STRESS, NOT_STATED);
        double turn = fields.orElse("force at the turn", TURN_FORCE, NOT_STATED);
        double uneven = fields.orElse("uneven sides", UNEVEN, NOT_STATED);
        Straying straying = fields.optionalChoice("hold for", Words.STRAYING).orElse(Straying.AS_TOLD);
        return fields.built(() -> new Bounds(torque, stress, turn, uneven, straying));
    }
}
