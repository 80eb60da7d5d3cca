package counterpull.report.card;

import counterpull.picture.ExerciseFigure;
import counterpull.picture.Figure;
import counterpull.picture.Palette;
import counterpull.picture.View;
import counterpull.picture.Wording;
import counterpull.report.Setup;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The small figure of a card: the picture without its words, which would be too small to read at arm's length. */
final class CardFigure {
    private static final Pattern WORDS = Pattern.compile("<text\\b.*?</text>", Pattern.DOTALL);

    private CardFigure() {}

    /** The setup held at the bottom; empty where the card has no room for a figure. */
    static String of(Setup setup, Density density) {
        return of(density, view -> Figure.of(setup.profile()).svg(view));
    }

    /** An exercise held at the bottom; empty where the card has no room for a figure. */
    static String of(ExerciseFigure figure, Density density) {
        return of(density, figure::svg);
    }

    private static String of(Density density, Function<View, String> drawing) {
        return density.figure()
                .map(size -> drawing.apply(new View(size, Palette.PRINT, Wording.metric())))
                .map(svg -> WORDS.matcher(svg).replaceAll(""))
                .orElse("");
    }
}
