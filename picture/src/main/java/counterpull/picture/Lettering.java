package counterpull.picture;

/**
 * How a word is set.
 *
 * @param size px, 11 or more
 * @param weight normal or bold
 * @param ink colour token
 * @param align which point of the word is given
 */
record Lettering(double size, Weight weight, Ink ink, Align align) {
    static final double SMALL = 11;
    static final double BODY = 12;
    static final double HEAD = 14;
    static final double LARGE = 18;

    /** The two weights. */
    enum Weight {
        NORMAL,
        BOLD
    }

    /** Where the given point is. */
    enum Align {
        START("start"),
        MIDDLE("middle"),
        END("end");

        final String svg;

        Align(String svg) {
            this.svg = svg;
        }
    }

    static Lettering small(Ink ink) {
        return new Lettering(SMALL, Weight.NORMAL, ink, Align.START);
    }

    static Lettering body(Ink ink) {
        return new Lettering(BODY, Weight.NORMAL, ink, Align.START);
    }

    static Lettering head(Ink ink) {
        return new Lettering(HEAD, Weight.BOLD, ink, Align.START);
    }

    Lettering aligned(Align to) {
        return new Lettering(size, weight, ink, to);
    }

    Lettering bold() {
        return new Lettering(size, Weight.BOLD, ink, align);
    }

    Lettering sized(double px) {
        return new Lettering(px, weight, ink, align);
    }
}
