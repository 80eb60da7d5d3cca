package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.SpeedLaw;
import java.util.List;

/**
 * A person's own strength curve of one action.
 *
 * @param action which action
 * @param points rising in angle
 * @param spread standard deviation of log torque, about the fraction
 */
public record OwnCurve(Action action, List<Point> points, double spread) {
    public OwnCurve {
        points = List.copyOf(points);
    }

    /**
     * A point of the curve.
     *
     * @param angle anatomical angle, rad
     * @param torque N·m
     */
    public record Point(double angle, double torque) {}

    /** Refuses points that make no curve. */
    public void check() {
        curve(new SpeedLaw.AnySpeed());
    }

    DrawnCurve curve(SpeedLaw speedLaw) {
        return DrawnCurve.through(
                points.stream().mapToDouble(Point::angle).toArray(),
                points.stream().mapToDouble(Point::torque).toArray(),
                spread,
                speedLaw);
    }
}
