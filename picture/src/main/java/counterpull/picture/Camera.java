package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * From the axes of an exercise (m) to the picture (px): turned or mirrored, one scale for both directions, y downward.
 */
final class Camera {
    private final Sight sight;
    private final double scale;
    private final Vec shift;
    private final double floor;

    private Camera(Sight sight, double scale, Vec shift, double floor) {
        this.sight = sight;
        this.scale = scale;
        this.shift = shift;
        this.floor = floor;
    }

    /**
     * A camera that has all points in its box.
     *
     * @param points in the axes of the exercise, m
     * @param sight how those axes lie on the picture
     * @param box px
     * @param below room between the lowest point and the floor, m
     */
    static Camera holding(List<Vec> points, Sight sight, Box box, double below) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vec point : points) {
            Vec world = sight.of(point);
            left = Math.min(left, world.x());
            right = Math.max(right, world.x());
            low = Math.min(low, world.y());
            high = Math.max(high, world.y());
        }
        double floor = low - below;
        double scale = Math.min(box.width() / (right - left), box.height() / (high - floor));
        double x = box.left() + (box.width() - scale * (right - left)) / 2 - scale * left;
        double y = box.bottom() + scale * floor;
        return new Camera(sight, scale, new Vec(x, y), floor);
    }

    /** Where a point is on the picture. */
    Vec see(Vec point) {
        Vec world = sight.of(point);
        return new Vec(shift.x() + scale * world.x(), shift.y() - scale * world.y());
    }

    /** A direction or distance on the picture. */
    Vec way(Vec vector) {
        Vec world = sight.of(vector);
        return new Vec(scale * world.x(), -scale * world.y());
    }

    /** The place on the floor under a point. */
    Vec floorUnder(Vec point) {
        Vec seen = see(point);
        return new Vec(seen.x(), shift.y() - scale * floor);
    }

    double px(double metres) {
        return scale * metres;
    }
}
