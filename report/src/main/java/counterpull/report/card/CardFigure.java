package counterpull.report.card;

import counterpull.report.Setup;

/** The small figure of a card: the picture without its words, which would be too small to read at arm's length. */
final class CardFigure {
    private CardFigure() {}

    /** Empty where the card has no room for one. */
    static String of(Setup setup, Density density) {
        return "";
    }
}
