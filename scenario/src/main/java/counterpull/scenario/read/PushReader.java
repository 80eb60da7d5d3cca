package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.PUSH_ANGLE;
import static counterpull.scenario.format.Measures.PUSH_INTERVAL;

import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.Optional;

/** Reads which way the person pushes. */
final class PushReader {
    private PushReader() {}

    static Optional<Pushing> read(Fields fields) {
        Optional<Push> push = fields.oneOf("angle", "through", "least effort").flatMap(given -> push(fields, given));
        double interval = fields.orElse("interval", PUSH_INTERVAL, Pushing.USUAL_SPREAD);
        return fields.built(() -> new Pushing(push.orElseThrow(), interval));
    }

    private static Optional<Push> push(Fields fields, String given) {
        return switch (given) {
            case "angle" -> angled(fields);
            case "through" -> Optional.of(new Push.Through(fields.choice("through", Words.BODY_POINT)));
            default -> fields.group("least effort", Shapes.FROM_TO).flatMap(PushReader::leastEffort);
        };
    }

    private static Optional<Push> angled(Fields fields) {
        double angle = fields.required("angle", PUSH_ANGLE);
        return fields.built(() -> new Push.Angled(angle));
    }

    private static Optional<Push> leastEffort(Fields fields) {
        double from = fields.required("from", PUSH_ANGLE);
        double to = fields.required("to", PUSH_ANGLE);
        if (fields.isSound() && from >= to) {
            fields.report(Code.OUT_OF_ORDER, "to", "\"to\" must be above \"from\"", "Exchange them");
        }
        return fields.built(() -> new Push.LeastEffort(from, to));
    }
}
