package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * Every stroke starts and ends at rest without acceleration: minimum jerk, peak speed 1.875 D/T, peak acceleration
 * (10/√3) D/T². Pauses enter no force.
 *
 * @param seconds lowering, low pause, lifting, high pause
 */
public record FullStop(Seconds seconds) implements Tempo {
    public FullStop {
        check(seconds);
    }

    static void check(Seconds seconds) {
        Seconds.require(seconds.lowering(), "time of lowering");
        Seconds.require(seconds.lifting(), "time of lifting");
        Require.within(seconds.lowPause(), new Require.Limits(0, 60), "pause at the bottom", "s");
        Require.within(seconds.highPause(), new Require.Limits(0, 60), "pause at the top", "s");
    }

    @Override
    public StrokeMotion along(Phase phase, double[] fraction, double travel) {
        return StrokeMotion.of(stroke(phase, travel), phase, fraction);
    }

    @Override
    public double peakNearBottom(double travel) {
        return Math.max(
                stroke(Phase.LIFTING, travel).peakNearBottom(),
                stroke(Phase.LOWERING, travel).peakNearBottom());
    }

    private QuinticStroke stroke(Phase phase, double travel) {
        double time = phase == Phase.LIFTING ? seconds.lifting() : seconds.lowering();
        return new QuinticStroke(travel, time, 0, 0);
    }

    @Override
    public Seconds seconds(double travel) {
        return seconds;
    }

    @Override
    public String words() {
        return "full stop at both ends";
    }

    @Override
    public boolean wholeStroke() {
        return true;
    }

    @Override
    public Tempo slower(double factor) {
        return new FullStop(new Seconds(
                factor * seconds.lowering(),
                factor * seconds.lowPause(),
                factor * seconds.lifting(),
                factor * seconds.highPause()));
    }
}
