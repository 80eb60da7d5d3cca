package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * A bounce at the bottom: constant acceleration a = (v↓ + v↑)/T through the turn, constant speed outside it. The far end is
 * not modelled. v↓²/2a and v↑²/2a must fit into the travel.
 *
 * @param speedDown v↓, m/s or rad/s, above zero to 100
 * @param speedUp v↑, above zero to 100
 * @param turnTime T, s, 0.001 to 1e6
 */
public record Bounce(double speedDown, double speedUp, double turnTime) implements Tempo {
    private static final Require.Limits SPEED = new Require.Limits(0, 100);

    public Bounce {
        Require.within(
                Require.positive(speedDown, "speed of lowering", "m/s or rad/s"),
                SPEED,
                "speed of lowering",
                "m/s or rad/s");
        Require.within(
                Require.positive(speedUp, "speed of lifting", "m/s or rad/s"),
                SPEED,
                "speed of lifting",
                "m/s or rad/s");
        Seconds.require(turnTime, "time of the turn");
    }

    /** Acceleration of the turn, per s². */
    public double acceleration() {
        return (speedDown + speedUp) / turnTime;
    }

    /** How far from the bottom the turn's acceleration begins (lowering) or ends (lifting). */
    public double turnLength(Phase phase) {
        double speed = phase == Phase.LIFTING ? speedUp : speedDown;
        return speed * speed / (2 * acceleration());
    }

    @Override
    public StrokeMotion along(Phase phase, double[] fraction, double travel) {
        double length = fitting(phase, travel);
        double fast = phase == Phase.LIFTING ? speedUp : speedDown;
        double[] speed = new double[fraction.length];
        double[] acceleration = new double[fraction.length];
        for (int i = 0; i < fraction.length; i++) {
            double from = fraction[i] * travel;
            boolean turning = from <= length;
            acceleration[i] = turning ? acceleration() : 0;
            speed[i] = phase.sense() * (turning ? Math.sqrt(2 * acceleration() * from) : fast);
        }
        return new StrokeMotion(speed, acceleration);
    }

    private double fitting(Phase phase, double travel) {
        double length = turnLength(phase);
        if (length > travel) {
            throw new Refusal(
                    Fault.OUT_OF_REACH,
                    "length of the bounce's turn",
                    length,
                    travel,
                    "m or rad",
                    "the bounce needs more travel than the range has: shorten its time or lower its speed");
        }
        return length;
    }

    @Override
    public double peakNearBottom(double travel) {
        fitting(Phase.LIFTING, travel);
        fitting(Phase.LOWERING, travel);
        return acceleration();
    }

    @Override
    public Seconds seconds(double travel) {
        return new Seconds(strokeTime(speedDown, travel), 0, strokeTime(speedUp, travel), 0);
    }

    // constant speed outside the turn, half of it on average inside
    private double strokeTime(double speed, double travel) {
        return travel / speed + speed / (2 * acceleration());
    }

    @Override
    public String words() {
        return "bounce at the bottom; the top end is not modelled";
    }

    @Override
    public boolean wholeStroke() {
        return false;
    }

    @Override
    public Tempo slower(double factor) {
        return new Bounce(speedDown / factor, speedUp / factor, factor * turnTime);
    }
}
