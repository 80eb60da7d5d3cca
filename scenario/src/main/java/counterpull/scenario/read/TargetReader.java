package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.AT_LEAST_ONE;
import static counterpull.scenario.format.Measures.CEILING;
import static counterpull.scenario.format.Measures.EFFORT;
import static counterpull.scenario.format.Measures.KNEE;
import static counterpull.scenario.format.Measures.LEAST_FORCE;
import static counterpull.scenario.format.Measures.REPETITIONS;
import static counterpull.scenario.format.Measures.REST;
import static counterpull.scenario.format.Measures.SETS;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.body.Joint;
import counterpull.scenario.content.Plan;
import counterpull.scenario.content.Target;
import counterpull.scenario.content.Target.Point;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Span;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads the target and the plan. */
final class TargetReader {
    private TargetReader() {}

    /** Target and plan stand in one group. */
    record Found(Target target, Plan plan) {}

    static Optional<Found> read(Fields top) {
        return top.group("target", Shapes.TARGET).flatMap(TargetReader::found);
    }

    static Optional<Found> found(Fields fields) {
        List<Point> points = points(fields);
        double ceiling = fields.required("ceiling", CEILING);
        double leastForce = fields.orElse("least force", LEAST_FORCE, 0);
        List<Joint> joints = joints(fields);
        int sets = fields.count("sets", SETS);
        int repetitions = fields.count("repetitions", REPETITIONS);
        int left = fields.count("repetitions left", new Span(0, 50));
        double rest = fields.required("rest", REST);
        return fields.built(() -> {
            Target target = new Target(points, ceiling, leastForce, joints);
            target.effort();
            return new Found(target, new Plan(sets, repetitions, left, rest));
        });
    }

    private static List<Point> points(Fields fields) {
        Optional<String> given = fields.oneOf("effort", "effort at knee angles");
        if (given.isEmpty()) {
            return List.of();
        }
        if (given.get().equals("effort")) {
            return List.of(new Point(0, fields.required("effort", EFFORT)));
        }
        List<Point> points = new ArrayList<>();
        for (Fields point : fields.groups("effort at knee angles", Shapes.TARGET_POINT, AT_LEAST_ONE)) {
            Point read = new Point(point.required("knee", KNEE), point.required("effort", EFFORT));
            if (point.isSound() && points.stream().anyMatch(other -> other.knee() == read.knee())) {
                point.report(Code.CONTRADICTION, "knee", "another point has this knee angle", "Keep one");
            }
            points.add(read);
        }
        points.sort(Comparator.comparingDouble(Point::knee));
        return points;
    }

    /** All joints where none is named; proximal first. */
    private static List<Joint> joints(Fields fields) {
        List<Joint> named = fields.optionalChoices("joints", Words.JOINT, new Span(1, UP_TO_A_HUNDRED.high()));
        return named.isEmpty() ? Joint.LEG : named.stream().distinct().sorted().toList();
    }
}
