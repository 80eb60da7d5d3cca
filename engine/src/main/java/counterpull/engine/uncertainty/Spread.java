package counterpull.engine.uncertainty;

/**
 * A standard uncertainty: one standard deviation.
 *
 * @param kind what it is counted in
 * @param value rad, m, kg, N or a pure number, as the kind says; zero or more
 */
public record Spread(Kind kind, double value) {
    /** What a standard uncertainty is counted in. */
    public enum Kind {
        /** rad. */
        ANGLE,
        /** m. */
        LENGTH,
        /** kg. */
        MASS,
        /** N. */
        FORCE,
        /** A share of the value itself: 0.05 is 5 %. */
        SHARE,
        /** A pure number, of the value's own kind. */
        NUMBER
    }
}
