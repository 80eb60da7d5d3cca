package counterpull.letgo;

import counterpull.engine.Constants;
import counterpull.engine.Require;
import java.util.List;

/**
 * A lever on a pivot with nobody on it: its own weight, plates and a counterweight. Its coordinate is the direction φ of the lever's
 * reference line (pivot → pad), rad CCW from horizontal; a lever that is lifted clockwise is described as seen from its other
 * side, φ as π − φ and offsets with the other sign.
 *
 * <p>weight = −g Σ m r cos(φ + offset), inertia I + Σ m r² of the points. Source: any mechanics text.
 *
 * @param own the lever's own mass and centre of mass; its inertia is in {@code inertia}
 * @param inertia I of the bare lever about the pivot, kg·m², zero or more; above zero in all with the points
 * @param points plates on their horns and the counterweight, as points
 * @param friction of the pivot, N·m
 * @param ends how far it turns, rad
 */
public record FreeLever(Point own, double inertia, List<Point> points, PivotFriction friction, Ends ends)
        implements LoneMachine {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.MAX_VALUE);

    public FreeLever {
        Require.within(inertia, NOT_NEGATIVE, "lever's own inertia about its pivot", "kg·m²");
        points = List.copyOf(points);
        Require.positive(total(inertia, points), "inertia of lever and plates about the pivot", "kg·m²");
    }

    /**
     * A mass on the lever.
     *
     * @param mass kg, zero or more
     * @param radius from the pivot, m, zero or more
     * @param offset direction of pivot → mass, rad CCW from the lever's reference line
     */
    public record Point(double mass, double radius, double offset) {
        public Point {
            Require.within(mass, NOT_NEGATIVE, "mass on the lever", "kg");
            Require.within(radius, NOT_NEGATIVE, "its distance from the pivot", "m");
            Require.finite(offset, "its direction from the lever's reference line", "rad");
        }
    }

    /**
     * Friction of the pivot.
     *
     * @param moving torque against the motion, N·m, zero or more
     * @param breakaway torque that first moves it beyond its weight's, N·m; 0 where not measured: then {@code moving} counts
     */
    public record PivotFriction(double moving, double breakaway) {
        public PivotFriction {
            Require.within(moving, NOT_NEGATIVE, "friction of the pivot", "N·m");
            Require.within(breakaway, NOT_NEGATIVE, "breakaway friction of the pivot", "N·m");
        }
    }

    private static double total(double own, List<Point> points) {
        double sum = own;
        for (Point point : points) {
            sum += point.mass() * point.radius() * point.radius();
        }
        return sum;
    }

    @Override
    public double inertia(double x) {
        return total(inertia, points);
    }

    @Override
    public double inertiaSlope(double x) {
        return 0;
    }

    @Override
    public double weight(double x) {
        double sum = moment(own) * Math.cos(x + own.offset());
        for (Point point : points) {
            sum += moment(point) * Math.cos(x + point.offset());
        }
        return -sum;
    }

    @Override
    public double weightEnergy(double x) {
        double sum = moment(own) * Math.sin(x + own.offset());
        for (Point point : points) {
            sum += moment(point) * Math.sin(x + point.offset());
        }
        return sum;
    }

    private static double moment(Point point) {
        return Constants.STANDARD_GRAVITY * point.mass() * point.radius();
    }

    @Override
    public double friction(double x) {
        return friction.moving();
    }

    @Override
    public double holding(double x) {
        return Math.max(friction.moving(), friction.breakaway());
    }

    @Override
    public double rubber(double x, Sense sense) {
        return 0;
    }

    @Override
    public double storing(double x) {
        return 0;
    }

    @Override
    public double rubberEnergy(double x) {
        return 0;
    }

    @Override
    public double testedRoom(double x) {
        return Double.POSITIVE_INFINITY;
    }
}
