package counterpull.picture;

/**
 * A stroke.
 *
 * @param ink colour token
 * @param width px
 * @param dash SVG dash array, empty for a solid line
 * @param opacity 0 to 1
 */
record Pen(Ink ink, double width, String dash, double opacity) {
    static Pen of(Ink ink, double width) {
        return new Pen(ink, width, "", 1);
    }

    Pen dashed(String pattern) {
        return new Pen(ink, width, pattern, opacity);
    }

    Pen faded(double to) {
        return new Pen(ink, width, dash, to);
    }
}
