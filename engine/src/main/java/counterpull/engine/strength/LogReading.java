package counterpull.engine.strength;

/**
 * What one test says of the log ratio to the curve that it bends.
 *
 * @param angle rad
 * @param value log ratio
 * @param noise variance of the value, above 0
 */
record LogReading(double angle, double value, double noise) {
    /**
     * Rounding in a matrix of nearly equal rows is near 1e-17; 1e-12 keeps its root real and moves no torque by 1e-6.
     */
    private static final double LEAST_NOISE = 1e-12;

    /** A test over the torque (N·m, above 0) that the curve has at its angle. */
    static LogReading of(IsometricTest test, double given) {
        double noise = Math.max(LEAST_NOISE, test.logVariance());
        return new LogReading(test.angle(), Math.log(test.torque() / given), noise);
    }
}
