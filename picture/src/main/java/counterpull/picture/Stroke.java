package counterpull.picture;

/** The form of a curve: what kind of thing it shows, whatever its colour. */
public enum Stroke {
    /** What is asked: solid. */
    ASKED(2.2, ""),
    /** What is asked, of second rank beside another: solid and finer. */
    ASKED_FINE(1.3, ""),
    /** What the person has: dashed. */
    HAD(2, "7 4"),
    /** What the person has, of second rank: finely dashed. */
    HAD_FINE(1.3, "3 3"),
    /** What is wanted: a thin double line. */
    TARGET(3.6, ""),
    /** Today's setup: thin, grey. */
    TODAY(1.4, ""),
    /** The second of several side by side: long dashes. */
    SECOND(2.2, "11 4"),
    /** The third: dots. */
    THIRD(2.4, "2 4"),
    /** The fourth: dash and dot. */
    FOURTH(2.2, "10 3 2 3");

    final double width;
    final String dash;
    final boolean fine;

    Stroke(double width, String dash) {
        this.width = width;
        this.dash = dash;
        fine = width == 1.3;
    }
}
