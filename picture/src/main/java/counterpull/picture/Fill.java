package counterpull.picture;

/**
 * An area.
 *
 * @param ink colour token
 * @param opacity 0 to 1; 0 leaves the area open
 */
record Fill(Ink ink, double opacity) {
    static final Fill NONE = new Fill(Ink.PAPER, 0);

    static Fill of(Ink ink) {
        return new Fill(ink, 1);
    }
}
