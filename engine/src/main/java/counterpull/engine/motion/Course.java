package counterpull.engine.motion;

/**
 * The coordinate of a stroke over its range and in time: x runs from 0 at the bottom to the whole travel at the top, in m or
 * rad, at equal steps or at stated places. Speeds and accelerations of x are positive toward the top, per s and per s². Read-only
 * once made.
 */
public final class Course {
    private final double travel;
    private final double[] fraction;
    private final StrokeMotion[] strokes;

    private Course(double travel, double[] fraction, Tempo tempo) {
        this.travel = travel;
        this.fraction = fraction;
        strokes = new StrokeMotion[] {
            StrokeMotion.still(fraction.length),
            tempo.along(Phase.LIFTING, fraction, travel),
            tempo.along(Phase.LOWERING, fraction, travel)
        };
    }

    /**
     * A whole stroke at equal steps.
     *
     * @param travel whole travel, m or rad, above zero
     * @param positions how many positions, two or more
     * @param tempo how it is timed
     */
    public static Course even(double travel, int positions, Tempo tempo) {
        double[] fraction = new double[positions];
        for (int i = 0; i < positions; i++) {
            fraction[i] = i / (positions - 1.0);
        }
        return new Course(travel, fraction, tempo);
    }

    /** How many positions there are, bottom first. */
    public int positions() {
        return fraction.length;
    }

    /** Whole travel, m or rad. */
    public double travel() {
        return travel;
    }

    /** x at position i as a fraction of the travel. */
    public double fraction(int i) {
        return fraction[i];
    }

    /** x at position i, m or rad. */
    public double at(int i) {
        return fraction[i] * travel;
    }

    /** Speed of x, per s. */
    public double speed(Phase phase, int i) {
        return strokes[phase.ordinal()].speed(i);
    }

    /** Acceleration of x, per s². */
    public double acceleration(Phase phase, int i) {
        return strokes[phase.ordinal()].acceleration(i);
    }

    /** How many values phase × position have. */
    public int cells() {
        return Phase.values().length * fraction.length;
    }

    /** Where phase and position lie in a flat array of {@link #cells()} values. */
    public int cell(Phase phase, int i) {
        return phase.ordinal() * fraction.length + i;
    }
}
