package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws readings as shapes of their own, and bars that say how sure they are. */
final class DotsDrawing {
    private static final double SIZE = 3.6;
    private static final double FOOT = 3;
    private final Svg svg;
    private final Plot plot;
    private final LabelColumn column;

    DotsDrawing(Svg svg, Plot plot, LabelColumn column) {
        this.svg = svg;
        this.plot = plot;
        this.column = column;
    }

    void draw(Layer.Dots dots) {
        for (int i = 0; i < dots.series().size(); i++) {
            if (dots.series().known(i)) {
                dots.marker().draw(svg, plot.at(dots.series(), i), SIZE, dots.ink());
            }
        }
        int last = dots.series().endKnown(plot.range().sense());
        if (last >= 0 && !dots.label().isEmpty()) {
            column.add(
                    new LabelColumn.Text(plot.at(dots.series(), last), dots.label(), LabelColumn.Rank.FIRST),
                    (s, from, to) -> dots.marker().draw(s, from.plus(to).times(0.5), SIZE, dots.ink()));
        }
    }

    static void bars(Svg svg, Plot plot, Layer.Bars bars) {
        Pen pen = Pen.of(bars.ink(), 1.2);
        for (int i = 0; i < bars.low().size(); i++) {
            if (bars.low().known(i) && bars.high().known(i)) {
                Vec low = plot.at(bars.low(), i);
                Vec high = plot.at(bars.high(), i);
                svg.line(low, high, pen);
                for (Vec end : new Vec[] {low, high}) {
                    svg.line(end.minus(new Vec(FOOT, 0)), end.plus(new Vec(FOOT, 0)), pen);
                }
            }
        }
    }
}
