package counterpull.engine.planar;

/**
 * Where the segments of a chain point and how they turn at one instant. A mutable working value, so that a whole range is
 * walked without allocating: set it, use it, set it again. Directions in radians counter-clockwise from x, rates in rad/s,
 * accelerations in rad/s²; the first joint's own acceleration in m/s².
 */
public final class ChainMotion {
    final double[] cos;
    final double[] sin;
    final double[] rate;
    final double[] acceleration;
    double baseX;
    double baseY;

    /** A motion for a chain of {@code size} segments, all along x and at rest. */
    public ChainMotion(int size) {
        cos = new double[size];
        sin = new double[size];
        rate = new double[size];
        acceleration = new double[size];
        java.util.Arrays.fill(cos, 1);
    }

    /** Points segment i. */
    public void direction(int i, double angle) {
        cos[i] = Math.cos(angle);
        sin[i] = Math.sin(angle);
    }

    /** Points segment i by the cosine and sine of its direction, where they are known already. */
    public void direction(int i, double cosine, double sine) {
        cos[i] = cosine;
        sin[i] = sine;
    }

    /** Says how segment i turns: rate in rad/s, acceleration in rad/s². */
    public void turning(int i, double rateOfTurn, double angularAcceleration) {
        rate[i] = rateOfTurn;
        acceleration[i] = angularAcceleration;
    }

    /** Acceleration of the first joint, m/s². */
    public void base(double x, double y) {
        baseX = x;
        baseY = y;
    }

    /** Stops all turning and the base; directions stay. */
    public void rest() {
        java.util.Arrays.fill(rate, 0);
        java.util.Arrays.fill(acceleration, 0);
        base(0, 0);
    }

    /** x of a point of segment i relative to its proximal joint, from its place along and across the segment, m. */
    public double armX(int i, double along, double across) {
        return cos[i] * along - sin[i] * across;
    }

    /** y of a point of segment i relative to its proximal joint, m. */
    public double armY(int i, double along, double across) {
        return sin[i] * along + cos[i] * across;
    }
}
