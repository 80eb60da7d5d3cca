package counterpull.engine.motion;

/**
 * Turns without a pause at the named ends: speed 0 and one shared acceleration there, the joint minimum of squared jerk of
 * both strokes, capped so that each stroke stays monotone; at an end that does not turn speed and acceleration are 0.
 *
 * <p>One end: a = min[(20/3) D (1/T↓² − 1/(T↓T↑) + 1/T↑²), 20 D / max(T)²]. Both ends: a = min[5 D (…), 30 D / max(T)²], upward
 * at the bottom, downward at the top. Source: docs/notation.md; closed form, checked against a numerical minimum.
 *
 * @param lowering s, above zero
 * @param lifting s, above zero
 * @param turn which end turns
 */
public record Flowing(double lowering, double lifting, Turn turn) implements Tempo {
    /** Which end of the stroke turns without stopping. */
    public enum Turn {
        BOTTOM("flowing at the bottom", 1, 0, 20.0 / 3, 20),
        TOP("flowing at the top", 0, -1, 20.0 / 3, 20),
        BOTH("flowing at both ends", 1, -1, 5, 30);

        private final String words;
        private final int bottom;
        private final int top;
        private final double smoothest;
        private final double cap;

        Turn(String words, int bottom, int top, double smoothest, double cap) {
            this.words = words;
            this.bottom = bottom;
            this.top = top;
            this.smoothest = smoothest;
            this.cap = cap;
        }
    }

    public Flowing {
        Seconds.require(lowering, "time of lowering");
        Seconds.require(lifting, "time of lifting");
    }

    /** The shared acceleration at a turn for a stroke of this travel, per s². */
    public double turnAcceleration(double travel) {
        double smooth = 1 / (lowering * lowering) - 1 / (lowering * lifting) + 1 / (lifting * lifting);
        double longest = Math.max(lowering, lifting);
        return Math.min(turn.smoothest * travel * smooth, turn.cap * travel / (longest * longest));
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
        double a = turnAcceleration(travel);
        double time = phase == Phase.LIFTING ? lifting : lowering;
        return new QuinticStroke(travel, time, turn.bottom * a, turn.top * a);
    }

    @Override
    public Seconds seconds(double travel) {
        return new Seconds(lowering, 0, lifting, 0);
    }

    @Override
    public String words() {
        return turn.words;
    }

    @Override
    public boolean wholeStroke() {
        return true;
    }

    @Override
    public Tempo slower(double factor) {
        return new Flowing(factor * lowering, factor * lifting, turn);
    }
}
