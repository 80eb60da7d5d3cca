package counterpull.scenario.movement;

import static counterpull.scenario.format.Measures.ANGLE;

import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.util.Optional;

/** Reads and writes a range worked over. */
public final class RangeFields {
    private static final double LEAST = 1e-6;

    private RangeFields() {}

    /** The range of a joint's angle, either way round. */
    public static Optional<WorkingRange> angles(Fields fields, String key) {
        return fields.optionalGroup(key, Shapes.JOINT_RANGE).flatMap(group -> read(group, ANGLE));
    }

    /** The range of a joint's angle that the lift must go through in its own sense, +1 rising or −1 falling. */
    static Optional<WorkingRange> turning(Fields fields, String key, int sense) {
        return fields.optionalGroup(key, Shapes.JOINT_RANGE).flatMap(group -> {
            Optional<WorkingRange> range = read(group, ANGLE);
            if (range.isPresent() && (range.get().top() - range.get().bottom()) * sense < 0) {
                group.report(
                        Code.OUT_OF_ORDER,
                        "top",
                        "this lift " + (sense > 0 ? "raises" : "lowers") + " the angle from bottom to top",
                        "Exchange bottom and top: the bottom is where the lift starts");
                return Optional.empty();
            }
            return range;
        });
    }

    /** The range of travel along a path. */
    static Optional<WorkingRange> travel(Fields fields, String key, Shape shape, Measure measure) {
        return fields.optionalGroup(key, shape).flatMap(group -> read(group, measure));
    }

    private static Optional<WorkingRange> read(Fields fields, Measure measure) {
        double bottom = fields.required("bottom", measure);
        double top = fields.required("top", measure);
        double painFree = fields.orElse("pain free", measure, bottom);
        if (fields.isSound() && (painFree - bottom) * (top - bottom) > 0) {
            fields.report(
                    Code.OUT_OF_ORDER,
                    "pain free",
                    "the range goes farther than what does not hurt",
                    "Let the range's bottom stop where it is free of pain");
        }
        if (fields.isSound() && Math.abs(top - bottom) < LEAST) {
            fields.report(
                    Code.EMPTY_RANGE,
                    "top",
                    "bottom and top are the same place, " + fields.peek("top").orElse(""),
                    "Give the two ends between which it moves");
        }
        return fields.built(() -> new WorkingRange(bottom, top, painFree));
    }

    /** The same keys. */
    public static Out written(WorkingRange range, Dimension dimension) {
        return new Out()
                .put("bottom", range.bottom(), dimension)
                .put("top", range.top(), dimension)
                .put("pain free", range.painFree(), dimension);
    }
}
