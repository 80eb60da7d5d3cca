package counterpull.engine.planar;

/** Angles in radians. */
public final class Angles {
    private static final double TURN = 2 * Math.PI;

    private Angles() {}

    /** The same direction in (−π, π]. */
    public static double wrap(double angle) {
        double rest = angle - TURN * Math.floor(angle / TURN);
        return rest > Math.PI ? rest - TURN : rest;
    }

    /** Degrees to radians. */
    public static double radians(double degrees) {
        return degrees * (Math.PI / 180);
    }

    /** Radians to degrees. */
    public static double degrees(double radians) {
        return radians * (180 / Math.PI);
    }
}
