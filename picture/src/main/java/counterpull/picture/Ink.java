package counterpull.picture;

/** What a line, an area or a word is for; a {@link Palette} gives each its colour. */
public enum Ink {
    /** The ground. */
    PAPER,
    /** Outlines, text. */
    INK,
    /** Second-rank text and lines that still carry meaning. */
    QUIET,
    /** Grid lines, ghosts, hatching of the floor. */
    FAINT,
    /** What a person sets: marks and stops. */
    ACCENT,
    /** The body's fill. */
    BODY,
    /** The machine's fill. */
    STEEL,
    /** Hip. */
    HIP,
    /** Knee. */
    KNEE,
    /** Ankle. */
    ANKLE,
    /** Today's setup. */
    TODAY,
    /** A limit. */
    LIMIT,
    /** Weight as a part of a force. */
    WEIGHT,
    /** Rubber, whatever its strength. */
    RUBBER,
    /** Friction as a part of a force. */
    FRICTION,
    /** Inertia as a part of a force. */
    INERTIA
}
