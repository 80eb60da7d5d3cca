package counterpull.report.card;

import counterpull.picture.Size;
import java.util.Optional;

/** How much room a card's parts get; the letters never get smaller. */
enum Density {
    ROOMY("roomy", new Size(300, 240)),
    CLOSE("close", new Size(260, 180)),
    TIGHT("tight", new Size(240, 160)),
    /** The figure gives way to the words. */
    FULL("tight full", null),
    /** So does the sentence on letting go, which the report has too; its cautions stay. */
    FULLEST("tight full", null);

    private final String css;
    private final Size figure;

    Density(String css, Size figure) {
        this.css = css;
        this.figure = figure;
    }

    /** Whether there is room to say what happens if they let go. */
    boolean tellsLetGo() {
        return this != FULLEST;
    }

    String css() {
        return css;
    }

    /** Size of the figure in px of 0.75 pt; empty where there is no room for one. */
    Optional<Size> figure() {
        return Optional.ofNullable(figure);
    }
}
