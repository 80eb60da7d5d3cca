package counterpull.picture;

/**
 * The look of a curve: colour and form together.
 *
 * @param ink colour token
 * @param stroke form
 * @param marker shape on the curve
 * @param heading arrow heads on the curve
 */
public record Look(Ink ink, Stroke stroke, Marker marker, Heading heading) {
    /** A plain curve. */
    public static Look of(Ink ink, Stroke stroke) {
        return new Look(ink, stroke, Marker.NONE, Heading.NONE);
    }

    /** With this shape on it. */
    public Look marked(Marker shape) {
        return new Look(ink, stroke, shape, heading);
    }

    /** With these arrow heads. */
    public Look heading(Heading way) {
        return new Look(ink, stroke, marker, way);
    }
}
