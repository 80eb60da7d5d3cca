package counterpull.engine.motion;

import counterpull.engine.planar.Vec;

/**
 * Where one point is at every position of a range, in the plane's axes from the fixed joint, m, with its first and second
 * derivative by the coordinate x of the stroke. Read-only once made.
 */
public final class PointTrack {
    private final double[] x;
    private final double[] y;
    private final double[] slopeX;
    private final double[] slopeY;
    private final double[] curveX;
    private final double[] curveY;

    /** A track of {@code positions} positions, all at the origin until {@link #set} is called by its maker. */
    public PointTrack(int positions) {
        x = new double[positions];
        y = new double[positions];
        slopeX = new double[positions];
        slopeY = new double[positions];
        curveX = new double[positions];
        curveY = new double[positions];
    }

    /** A point that does not move. */
    public static PointTrack fixed(Vec at, int positions) {
        PointTrack track = new PointTrack(positions);
        for (int i = 0; i < positions; i++) {
            track.set(i, at, new Vec(0, 0), new Vec(0, 0));
        }
        return track;
    }

    /** Says where the point is at position i, with its first and second derivative by x; for its maker alone. */
    public void set(int i, Vec at, Vec slope, Vec curve) {
        x[i] = at.x();
        y[i] = at.y();
        slopeX[i] = slope.x();
        slopeY[i] = slope.y();
        curveX[i] = curve.x();
        curveY[i] = curve.y();
    }

    /** How many positions there are. */
    public int positions() {
        return x.length;
    }

    /** Place, m. */
    public Vec at(int i) {
        return new Vec(x[i], y[i]);
    }

    /** d(place)/dx. */
    public Vec slope(int i) {
        return new Vec(slopeX[i], slopeY[i]);
    }

    /** d²(place)/dx². */
    public Vec curve(int i) {
        return new Vec(curveX[i], curveY[i]);
    }

    /** Velocity in a phase, m/s. */
    public Vec velocity(Course course, Phase phase, int i) {
        return slope(i).times(course.speed(phase, i));
    }

    /** Acceleration in a phase, m/s². */
    public Vec acceleration(Course course, Phase phase, int i) {
        double v = course.speed(phase, i);
        return slope(i).times(course.acceleration(phase, i)).plus(curve(i).times(v * v));
    }
}
