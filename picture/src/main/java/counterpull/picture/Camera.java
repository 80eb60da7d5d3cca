package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * From the sled's axes (m) to the picture (px): turned by the rail's angle, one scale for both directions, y downward.
 */
final class Camera {
    private final double tilt;
    private final double scale;
    private final Vec shift;
    private final double floor;

    private Camera(double tilt, double scale, Vec shift, double floor) {
        this.tilt = tilt;
        this.scale = scale;
        this.shift = shift;
        this.floor = floor;
    }

    /**
     * A camera that has all points in its box.
     *
     * @param points in the sled's axes, m
     * @param tilt rail angle, rad
     * @param box px
     * @param below room between the lowest point and the floor, m
     */
    static Camera holding(List<Vec> points, double tilt, Box box, double below) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vec point : points) {
            Vec world = turned(point, tilt);
            left = Math.min(left, world.x());
            right = Math.max(right, world.x());
            low = Math.min(low, world.y());
            high = Math.max(high, world.y());
        }
        double floor = low - below;
        double scale = Math.min(box.width() / (right - left), box.height() / (high - floor));
        double x = box.left() + (box.width() - scale * (right - left)) / 2 - scale * left;
        double y = box.bottom() + scale * floor;
        return new Camera(tilt, scale, new Vec(x, y), floor);
    }

    private static Vec turned(Vec point, double angle) {
        Vec along = Vec.unit(angle);
        return along.times(point.x()).plus(along.left().times(point.y()));
    }

    /** Where a point of the sled is on the picture. */
    Vec see(Vec point) {
        Vec world = turned(point, tilt);
        return new Vec(shift.x() + scale * world.x(), shift.y() - scale * world.y());
    }

    /** A direction or distance of the sled on the picture. */
    Vec way(Vec vector) {
        Vec world = turned(vector, tilt);
        return new Vec(scale * world.x(), -scale * world.y());
    }

    /** The place on the floor under a point of the sled. */
    Vec floorUnder(Vec point) {
        Vec seen = see(point);
        return new Vec(seen.x(), shift.y() - scale * floor);
    }

    double px(double metres) {
        return scale * metres;
    }
}
