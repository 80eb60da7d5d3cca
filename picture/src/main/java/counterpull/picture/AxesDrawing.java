package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws a chart's frame: grid, zero line, value ticks, and the two tick rows along the range. */
final class AxesDrawing {
    private static final double WORDS_ROOM = 42;
    private final Svg svg;
    private final Plot plot;
    private final View view;

    AxesDrawing(Svg svg, Plot plot, View view) {
        this.svg = svg;
        this.plot = plot;
        this.view = view;
    }

    void draw() {
        svg.open("axes");
        values();
        angles();
        marks();
        ends();
        svg.close();
    }

    private void values() {
        Ticks ticks = plot.ticks();
        Lettering small = Lettering.small(Ink.QUIET).aligned(Lettering.Align.END);
        for (int i = 0; i < ticks.count(); i++) {
            double y = plot.level(ticks.at(i));
            boolean zero = Math.abs(ticks.at(i)) < 1e-9;
            svg.line(
                    new Vec(plot.frame().left(), y),
                    new Vec(plot.frame().right(), y),
                    zero ? Pen.of(Ink.INK, 1.1) : Pen.of(Ink.FAINT, 0.7));
            svg.text(new Vec(plot.frame().left() - 6, y + 4), ticks.label(i), small);
        }
    }

    private void angles() {
        Unit unit = view.wording().angle();
        double low = unit.of(plot.range().top());
        double high = unit.of(plot.range().bottom());
        Ticks ticks = Ticks.within(low, high, Math.max(3, (int) (plot.frame().width() / WORDS_ROOM)));
        double y = plot.frame().bottom();
        svg.line(new Vec(plot.frame().left(), y), new Vec(plot.frame().right(), y), Pen.of(Ink.INK, 1.1));
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(ticks.at(i) * unit.size());
            svg.line(new Vec(x, y), new Vec(x, y + 4), Pen.of(Ink.INK, 1));
            svg.text(new Vec(x, y + 17), ticks.label(i) + unit.symbol(), middle(Ink.INK));
        }
        svg.text(new Vec(plot.frame().right() + 14, y + 17), "knee angle", Lettering.small(Ink.QUIET));
    }

    private void marks() {
        Unit unit = view.wording().length();
        Range range = plot.range();
        int most = Math.max(3, (int) (plot.frame().width() / WORDS_ROOM));
        Ticks ticks = Ticks.within(unit.of(range.lowestMark()), unit.of(range.highestMark()), most);
        double y = plot.frame().bottom() + 22;
        svg.line(new Vec(plot.frame().left(), y), new Vec(plot.frame().right(), y), Pen.of(Ink.ACCENT, 0.7));
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(range.angleAtMark(ticks.at(i) * unit.size()));
            svg.line(new Vec(x, y), new Vec(x, y + 4), Pen.of(Ink.ACCENT, 1));
        }
        crowded(ticks, unit, y);
        svg.text(new Vec(plot.frame().right() + 14, y + 15), "mark, " + unit.symbol(), Lettering.small(Ink.QUIET));
    }

    // marks crowd together near the top, where the leg is almost straight: a number that would touch the last one is
    // left out
    private void crowded(Ticks ticks, Unit unit, double y) {
        double free = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(plot.range().angleAtMark(ticks.at(i) * unit.size()));
            Box box = Box.of(new Vec(x, y + 15), ticks.label(i), middle(Ink.ACCENT));
            if (box.left() > free) {
                svg.text(new Vec(x, y + 15), ticks.label(i), middle(Ink.ACCENT));
                free = box.right() + 6;
            }
        }
    }

    private void ends() {
        if (view.size().small()) {
            return;
        }
        double y = plot.frame().bottom() + 52;
        Vec left = new Vec(plot.frame().left(), y);
        Vec right = new Vec(plot.frame().right(), y);
        svg.text(left, "bottom", Lettering.small(Ink.QUIET));
        svg.text(right, "top", Lettering.small(Ink.QUIET).aligned(Lettering.Align.END));
        svg.line(left.plus(new Vec(46, -4)), right.plus(new Vec(-28, -4)), Pen.of(Ink.FAINT, 1));
        CurveDrawing.arrow(svg, right.plus(new Vec(-30, -4)), new Vec(1, 0), new CurveDrawing.ArrowHead(5, Ink.QUIET));
    }

    private static Lettering middle(Ink ink) {
        return Lettering.small(ink).aligned(Lettering.Align.MIDDLE);
    }
}
