package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * A dimension line as a draughtsman draws it: heads at both ends, its words along it; where a tape is laid. Points in px.
 *
 * @param from one end
 * @param to the other end
 */
record DimensionLine(Vec from, Vec to) {
    private static final double HEAD = 6;
    private static final double ABOVE = 5;
    private static final double BELOW = 13;

    /**
     * The words along it.
     *
     * @param text what they say
     * @param share where their middle is, 0 at {@code from} to 1 at {@code to}
     * @param out to which side of the line they stand, px
     */
    record Words(String text, double share, Vec out) {}

    void draw(Sheet sheet, Words words) {
        Svg svg = sheet.svg();
        svg.line(from, to, Pen.of(Ink.INK, 0.9));
        Vec way = to.minus(from);
        Vec head = way.times(Math.min(HEAD, way.norm() / 3) / Math.max(1e-9, way.norm()));
        double size = Math.min(HEAD, way.norm() / 3);
        CurveDrawing.arrow(svg, to.minus(head), way, new CurveDrawing.ArrowHead(size, Ink.INK));
        CurveDrawing.arrow(svg, from.plus(head), way.times(-1), new CurveDrawing.ArrowHead(size, Ink.INK));
        sheet.words().keepOff(from, to);
        words(sheet, words);
    }

    // from the line to the base line of words that are turned by an angle
    private static Vec shift(double upright, Vec out) {
        Vec up = new Vec(Math.sin(upright), -Math.cos(upright));
        return up.times(up.dot(out) > 0 ? ABOVE : -BELOW);
    }

    private void words(Sheet sheet, Words words) {
        Lettering lettering = Lettering.body(Ink.INK).aligned(Lettering.Align.MIDDLE);
        Vec way = to.minus(from);
        double angle = Math.atan2(way.y(), way.x());
        // never upside down
        double upright = Math.abs(angle) > Math.PI / 2 + 1e-6 ? angle - Math.signum(angle) * Math.PI : angle;
        Vec middle = from.times(1 - words.share).plus(to.times(words.share)).plus(shift(upright, words.out));
        sheet.svg().turned(middle, Math.toDegrees(upright), words.text, lettering);
        double half = TextSize.width(words.text, lettering) / 2;
        Vec along = Vec.unit(upright);
        for (double s = -half; s <= half; s += 6) {
            Vec at = middle.plus(along.times(s));
            sheet.words().take(new Box(at.x() - 6, at.y() - 10, 12, 14));
        }
    }
}
