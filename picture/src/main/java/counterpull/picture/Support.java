package counterpull.picture;

import counterpull.engine.planar.Vec;

/** A seat or a bench: a plain hatched line under what is held. */
final class Support {
    private Support() {}

    /**
     * Draws it on the lower side of a part.
     *
     * @param sheet the figure
     * @param from one end of the part, m
     * @param to the other end, m
     * @param half half the part's thickness, m
     */
    static void under(Sheet sheet, Vec from, Vec to, double half) {
        Vec across = to.minus(from).left().times(1 / to.minus(from).norm());
        Vec down = across.y() > 0 ? across.times(-1) : across;
        Vec a = sheet.see(from.plus(down.times(half)));
        Vec b = sheet.see(to.plus(down.times(half)));
        line(sheet, a, b);
    }

    /** A hatched line between two points, px, hatched on its lower side. */
    static void line(Sheet sheet, Vec a, Vec b) {
        sheet.svg().line(a, b, Pen.of(Ink.INK, 1.5));
        double out = b.minus(a).left().y() > 0 ? 6 : -6;
        Hatching.edge(sheet.svg(), a, b, out, Pen.of(Ink.QUIET, 0.6));
        sheet.words().keepOff(a, b);
    }
}
