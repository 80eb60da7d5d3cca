package counterpull.picture;

import counterpull.engine.planar.Vec;

/** A bar of a round length in the picture's corner, and what the length of an arrow means. */
final class ScaleBar {
    private static final double LONGEST_BAR = 110;

    private ScaleBar() {}

    /**
     * Draws it.
     *
     * @param sheet the figure
     * @param picture the whole picture, px
     * @param wording the reader's units
     * @param means what a length stands for besides itself, given the bar's length, m; empty where nothing
     */
    static void draw(Sheet sheet, Box picture, Wording wording, Means means) {
        Unit unit = wording.length();
        Ticks ticks = Ticks.within(0, unit.of(Math.min(LONGEST_BAR, picture.width() / 6) / sheet.px(1)), 4);
        double length = ticks.high() * unit.size();
        Vec right = new Vec(picture.right() - 14, picture.bottom() - 14);
        Vec left = right.minus(new Vec(sheet.px(length), 0));
        Pen pen = Pen.of(Ink.QUIET, 1);
        sheet.svg().open("scale");
        sheet.svg().line(left, right, pen);
        for (Vec end : new Vec[] {left, right}) {
            sheet.svg().line(end.plus(new Vec(0, -4)), end.plus(new Vec(0, 4)), pen);
        }
        String words = unit.brief(length) + means.words(length);
        Lettering small = Lettering.small(Ink.QUIET).aligned(Lettering.Align.END);
        sheet.svg().text(left.plus(new Vec(-8, 4)), words, small);
        sheet.words().take(Box.of(left.plus(new Vec(-8, 4)), words, small));
        sheet.words().take(new Box(left.x(), left.y() - 5, sheet.px(length), 10));
        sheet.svg().close();
    }

    /** What the bar stands for. */
    interface Means {
        String words(double length);
    }
}
