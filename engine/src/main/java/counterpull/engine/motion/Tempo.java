package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * How fast a stroke goes and how it turns. The coordinate is the stroke's own (rail travel, path travel or joint angle),
 * read from the bottom; speeds and accelerations are positive toward the top.
 */
public sealed interface Tempo permits FullStop, Flowing, Bounce {
    /**
     * Speed and acceleration along a whole range.
     *
     * @param phase LIFTING or LOWERING
     * @param fraction how far each position is from the bottom, 0 to 1
     * @param travel the stroke's length, m or rad, above zero
     * @return the speeds and accelerations at these positions
     */
    StrokeMotion along(Phase phase, double[] fraction, double travel);

    /** Largest |acceleration| in the bottom half of either stroke, m/s² or rad/s². */
    double peakNearBottom(double travel);

    /** Seconds of lowering, low pause, lifting and high pause; a pause enters no force. */
    Seconds seconds(double travel);

    /** The same way of turning with every time so many times as long; speeds of a bounce are that many times slower. */
    Tempo slower(double factor);

    /** The tempo in words. */
    String words();

    /** Whether the whole stroke is modelled up to its far end; a bounce models only the turn at the bottom. */
    boolean wholeStroke();

    /**
     * Seconds of the four parts of a repetition.
     *
     * @param lowering s, above zero
     * @param lowPause s, zero or more
     * @param lifting s, above zero
     * @param highPause s, zero or more
     */
    record Seconds(double lowering, double lowPause, double lifting, double highPause) {
        // no body is that fast; beyond, a stroke's acceleration would overflow
        private static final Require.Limits ANY = new Require.Limits(1e-3, 1e6);

        /** The time of a stroke or of a turn itself if it is 0.001 s to 1e6 s, else a refusal. */
        static double require(double seconds, String quantity) {
            return Require.within(Require.positive(seconds, quantity, "s"), ANY, quantity, "s");
        }
    }
}
