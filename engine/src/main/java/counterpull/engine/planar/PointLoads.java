package counterpull.engine.planar;

/**
 * External forces on the segments of a chain, summed by segment as a force (N) and its moment about the segment's proximal
 * joint (N·m, counter-clockwise positive). A mutable working value: clear, add, use.
 */
public final class PointLoads {
    final double[] x;
    final double[] y;
    final double[] moment;

    /** No loads on a chain of {@code size} segments. */
    public PointLoads(int size) {
        x = new double[size];
        y = new double[size];
        moment = new double[size];
    }

    /** Takes all loads off. */
    public void clear() {
        java.util.Arrays.fill(x, 0);
        java.util.Arrays.fill(y, 0);
        java.util.Arrays.fill(moment, 0);
    }

    /**
     * Adds a force on segment i.
     *
     * @param i the segment
     * @param armX where it acts, relative to the segment's proximal joint, m
     * @param armY the same, y
     * @param fx force, N
     * @param fy force, N
     */
    public void add(int i, double armX, double armY, double fx, double fy) {
        x[i] += fx;
        y[i] += fy;
        moment[i] += armX * fy - armY * fx;
    }
}
