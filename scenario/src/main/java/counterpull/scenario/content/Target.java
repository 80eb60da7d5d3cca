package counterpull.scenario.content;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.EffortTarget;
import java.util.List;

/**
 * What is wanted.
 *
 * @param points effort along the range, rising in knee flexion; one point is the same effort everywhere
 * @param ceiling effort that may be passed nowhere
 * @param leastForce least force along the rail, N
 * @param joints which joints count, proximal first
 */
public record Target(List<Point> points, double ceiling, double leastForce, List<Joint> joints) {
    public Target {
        points = List.copyOf(points);
        joints = List.copyOf(joints);
    }

    /**
     * A point of the drawn target.
     *
     * @param knee knee flexion, rad
     * @param effort wanted effort, a fraction
     */
    public record Point(double knee, double effort) {}

    /** As the engine takes it. */
    public EffortTarget effort() {
        return EffortTarget.through(
                points.stream().mapToDouble(Point::knee).toArray(),
                points.stream().mapToDouble(Point::effort).toArray());
    }
}
