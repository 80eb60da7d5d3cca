package counterpull.engine.planar;

/**
 * A point or a vector of the exercise's plane: x forward, y up (or along and across a rail where the user says so), in
 * the unit of what it holds (m, N, m/s²).
 *
 * @param x first component
 * @param y second component
 */
public record Vec(double x, double y) {
    /** The unit vector e(a) = (cos a, sin a) of a direction in radians, counter-clockwise from x. */
    public static Vec unit(double angle) {
        return new Vec(Math.cos(angle), Math.sin(angle));
    }

    /** This vector and another one, added. */
    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y);
    }

    /** This vector less another one. */
    public Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y);
    }

    /** This vector times a number. */
    public Vec times(double factor) {
        return new Vec(x * factor, y * factor);
    }

    /** Scalar product. */
    public double dot(Vec other) {
        return x * other.x + y * other.y;
    }

    /** Out-of-plane component of the vector product, positive where the turn from this to the other is CCW. */
    public double cross(Vec other) {
        return x * other.y - y * other.x;
    }

    /** Length. */
    public double norm() {
        return Math.sqrt(x * x + y * y);
    }

    /** Turned a quarter counter-clockwise. */
    public Vec left() {
        return new Vec(-y, x);
    }
}
