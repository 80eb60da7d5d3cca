package counterpull.picture;

import counterpull.engine.Require;

/**
 * The size of a picture in px. Whole numbers: the PDF library clips anything else.
 *
 * @param width 200 to 4000
 * @param height 140 to 4000
 */
public record Size(int width, int height) {
    /** A chart on a page. */
    public static final Size CHART = new Size(640, 360);

    /** A chart on a card. */
    public static final Size CARD = new Size(400, 240);

    /** A figure on a page. */
    public static final Size FIGURE = new Size(760, 560);

    public Size {
        Require.within(width, new Require.Limits(200, 4000), "width of a picture", "px");
        Require.within(height, new Require.Limits(140, 4000), "height of a picture", "px");
    }

    /** Whether there is no room for second-rank words. */
    boolean small() {
        return width < 520 || height < 300;
    }
}
