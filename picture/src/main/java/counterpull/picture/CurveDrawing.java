package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws one curve: its line with gaps, arrow heads and markers. */
final class CurveDrawing {
    private static final double[] HEADS_TO_TOP = {0.22, 0.72};
    private static final double[] HEADS_TO_BOTTOM = {0.28, 0.78};
    private static final double[] MARKERS = {0.03, 0.5, 0.97};
    private final Svg svg;
    private final Plot plot;

    CurveDrawing(Svg svg, Plot plot) {
        this.svg = svg;
        this.plot = plot;
    }

    void draw(Series series, Look look) {
        PathData path = path(series);
        if (path.empty()) {
            return;
        }
        line(path, look);
        for (double share : look.heading() == Heading.TO_TOP ? HEADS_TO_TOP : HEADS_TO_BOTTOM) {
            head(series, look, share);
        }
        for (double share : MARKERS) {
            int i = (int) Math.rint(share * (series.size() - 1));
            if (series.known(i)) {
                look.marker().draw(svg, plot.at(series, i), 4, look.ink());
            }
        }
    }

    private void line(PathData path, Look look) {
        Stroke stroke = look.stroke();
        svg.path(path, Fill.NONE, Pen.of(look.ink(), stroke.width).dashed(stroke.dash));
        if (stroke == Stroke.TARGET) {
            svg.path(path, Fill.NONE, Pen.of(Ink.PAPER, 1.6));
        }
    }

    PathData path(Series series) {
        PathData path = new PathData();
        boolean down = false;
        for (int i = 0; i < series.size(); i++) {
            if (!series.known(i)) {
                down = false;
            } else {
                path = down ? path.line(plot.at(series, i)) : path.move(plot.at(series, i));
                down = true;
            }
        }
        return path;
    }

    private void head(Series series, Look look, double share) {
        int i = Math.max(1, (int) Math.rint(share * (series.size() - 1)));
        if (look.heading() == Heading.NONE || !series.known(i) || !series.known(i - 1)) {
            return;
        }
        Vec from = plot.at(series, i - 1);
        Vec to = plot.at(series, i);
        Vec way = look.heading() == Heading.TO_TOP ? to.minus(from) : from.minus(to);
        arrow(svg, to, way, new ArrowHead(look.stroke().width + 4.5, look.ink()));
    }

    /**
     * An arrow head.
     *
     * @param size half its length, px
     * @param ink colour token
     */
    record ArrowHead(double size, Ink ink) {}

    /** An arrow head centred on a point. */
    static void arrow(Svg svg, Vec at, Vec way, ArrowHead head) {
        double length = way.norm();
        if (length == 0) {
            return;
        }
        Vec along = way.times(head.size() / length);
        Vec across = along.left().times(0.62);
        PathData path = new PathData()
                .move(at.plus(along))
                .line(at.minus(along.times(0.8)).plus(across))
                .line(at.minus(along.times(0.45)))
                .line(at.minus(along.times(0.8)).minus(across))
                .close();
        svg.path(path, Fill.of(head.ink()), Pen.of(Ink.PAPER, 0.8));
    }

    /** The sample of a curve that stands before its label: the marker first, then the arrow head. */
    void key(Look look, Vec from, Vec to) {
        line(new PathData().move(from).line(to), look);
        boolean still = look.heading() == Heading.NONE;
        Vec middle = from.plus(to).times(0.5);
        if (!still) {
            double sense = look.heading() == Heading.TO_TOP ? 1 : -1;
            Vec at = look.marker() == Marker.NONE ? middle : to.minus(new Vec(5 + 2 * sense, 0));
            arrow(svg, at, new Vec(sense, 0), new ArrowHead(5, look.ink()));
        }
        look.marker().draw(svg, still ? middle : from.plus(new Vec(4, 0)), 3.5, look.ink());
    }
}
