package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws a chart's frame: grid, zero line, value ticks, and the two tick rows along the range. */
final class AxesDrawing {
    private static final double WORDS_ROOM = 42;
    private static final double DEGREES_ROOM = 34;
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
        range();
        plot.range().marks().ifPresent(this::marks);
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

    private void range() {
        Range range = plot.range();
        Unit unit = range.coordinate().unit(view.wording());
        double low = unit.of(Math.min(range.bottom(), range.top()));
        double high = unit.of(Math.max(range.bottom(), range.top()));
        Ticks ticks = Ticks.within(low, high, Math.max(3, (int) (plot.frame().width() / DEGREES_ROOM)));
        double y = plot.frame().bottom();
        svg.line(new Vec(plot.frame().left(), y), new Vec(plot.frame().right(), y), Pen.of(Ink.INK, 1.1));
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(ticks.at(i) * unit.size());
            svg.line(new Vec(x, y), new Vec(x, y + 4), Pen.of(Ink.INK, 1));
            String degrees = range.coordinate().kind() == Coordinate.Kind.ANGLE ? unit.symbol() : "";
            number(x, y + 17, ticks.label(i) + degrees);
        }
        name(range.coordinate(), unit, y + 17);
    }

    // the last one stays clear of the axis's name
    private void number(double x, double baseline, String words) {
        double half = TextSize.width(words, middle(Ink.INK)) / 2;
        double most = plot.frame().right() + 8 - half;
        svg.text(new Vec(Math.min(x, most), baseline), words, middle(Ink.INK));
    }

    private void name(Coordinate coordinate, Unit unit, double baseline) {
        boolean angle = coordinate.kind() == Coordinate.Kind.ANGLE;
        String words = angle ? coordinate.words() : coordinate.words() + ", " + unit.symbol();
        Vec at = new Vec(plot.frame().right() + 17, baseline);
        double room = view.size().width() - at.x() - 4;
        for (String line : Wrap.lines(words, room, Lettering.small(Ink.QUIET))) {
            svg.text(at, line, Lettering.small(Ink.QUIET));
            at = at.plus(new Vec(0, 13));
        }
    }

    private void marks(Marks marks) {
        Unit unit = view.wording().length();
        int most = Math.max(3, (int) (plot.frame().width() / WORDS_ROOM));
        Ticks ticks = Ticks.within(unit.of(marks.lowest()), unit.of(marks.highest()), most);
        double y = plot.frame().bottom() + 22;
        svg.line(new Vec(plot.frame().left(), y), new Vec(plot.frame().right(), y), Pen.of(Ink.ACCENT, 0.7));
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(marks.coordinateAt(ticks.at(i) * unit.size()));
            svg.line(new Vec(x, y), new Vec(x, y + 4), Pen.of(Ink.ACCENT, 1));
        }
        crowded(marks, ticks, unit);
        svg.text(new Vec(plot.frame().right() + 14, y + 15), "mark, " + unit.symbol(), Lettering.small(Ink.QUIET));
    }

    // marks crowd together near the top, where the leg is almost straight: a number that would touch the last one is
    // left out
    private void crowded(Marks marks, Ticks ticks, Unit unit) {
        double baseline = plot.frame().bottom() + 37;
        double free = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ticks.count(); i++) {
            double x = plot.x(marks.coordinateAt(ticks.at(i) * unit.size()));
            Box box = Box.of(new Vec(x, baseline), ticks.label(i), middle(Ink.ACCENT));
            if (box.left() > free) {
                svg.text(new Vec(x, baseline), ticks.label(i), middle(Ink.ACCENT));
                free = box.right() + 6;
            }
        }
    }

    private void ends() {
        if (view.size().small() || !plot.range().ofOneProfile()) {
            return;
        }
        double y = plot.frame().bottom() + (plot.range().marks().isPresent() ? 52 : 38);
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
