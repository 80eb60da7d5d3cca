package counterpull.engine.motion;

/**
 * Speed and acceleration of a stroke at the positions of a range, positive toward the top, per s and per s². Read-only
 * once made: the arrays are its own.
 */
public final class StrokeMotion {
    private final double[] speed;
    private final double[] acceleration;

    StrokeMotion(double[] speed, double[] acceleration) {
        this.speed = speed;
        this.acceleration = acceleration;
    }

    /** At rest at every one of {@code positions} positions. */
    public static StrokeMotion still(int positions) {
        return new StrokeMotion(new double[positions], new double[positions]);
    }

    static StrokeMotion of(QuinticStroke stroke, Phase phase, double[] fraction) {
        double[] speed = new double[fraction.length];
        double[] acceleration = new double[fraction.length];
        double perTime = stroke.travel() / stroke.seconds();
        double half = stroke.seconds() / 2;
        double guess = 0;
        for (int i = 0; i < fraction.length; i++) {
            double time = stroke.timeAt(fraction[i], guess);
            double upward = stroke.speed(time);
            speed[i] = phase.sense() * upward;
            acceleration[i] = stroke.acceleration(time);
            if (i + 1 < fraction.length) {
                // positions come in order: the next one is about as far on as speed and acceleration say
                double step = (fraction[i + 1] - fraction[i]) * perTime / upward;
                guess = time + step - step * step * acceleration[i] * half / upward;
            }
        }
        return new StrokeMotion(speed, acceleration);
    }

    /** Speed at position i, per s. */
    public double speed(int i) {
        return speed[i];
    }

    /** Acceleration at position i, per s². */
    public double acceleration(int i) {
        return acceleration[i];
    }
}
