package counterpull.scenario.read;

import counterpull.scenario.content.Aim;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Plan;
import counterpull.scenario.content.Target;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import java.util.List;
import java.util.Optional;

/** Reads what is wanted of an exercise, as far as it is stated; what only a sled has is refused. */
final class AimReader {
    private AimReader() {}

    static Aim read(Fields top) {
        Optional<TargetReader.Found> target =
                top.has("target") ? top.group("target", Shapes.TARGET).flatMap(AimReader::target) : Optional.empty();
        Bounds bounds = top.optionalGroup("limits", Shapes.LIMITS)
                .flatMap(AimReader::bounds)
                .orElse(Bounds.none());
        Optional<Target> wanted = target.map(TargetReader.Found::target);
        Optional<Plan> plan = target.map(TargetReader.Found::plan);
        return new Aim(wanted, plan, bounds);
    }

    private static Optional<TargetReader.Found> target(Fields fields) {
        onlyOnASled(fields, List.of("least force", "effort at knee angles"));
        return TargetReader.found(fields);
    }

    private static Optional<Bounds> bounds(Fields fields) {
        onlyOnASled(fields, List.of("force at the turn", "uneven sides", "hold for"));
        return LimitsReader.bounds(fields);
    }

    private static void onlyOnASled(Fields fields, List<String> keys) {
        for (String key : keys) {
            if (fields.has(key)) {
                fields.report(Code.CONTRADICTION, key, "only a rail press has this", "Leave it out here");
            }
        }
    }
}
