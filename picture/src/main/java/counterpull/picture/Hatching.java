package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Hatching as plain lines at 45°, clipped by computation: patterns and clip paths would need identifiers. */
final class Hatching {
    private static final double SPACING = 7;

    private Hatching() {}

    /** Fills a box. */
    static void fill(Svg svg, Box box, Pen pen) {
        PathData path = new PathData();
        for (double c = SPACING; c < box.width() + box.height(); c += SPACING) {
            double x0 = box.left() + Math.max(0, c - box.height());
            double y0 = box.top() + Math.min(c, box.height());
            double x1 = box.left() + Math.min(c, box.width());
            double y1 = box.top() + Math.max(0, c - box.width());
            path.move(new Vec(x0, y0)).line(new Vec(x1, y1));
        }
        if (!path.empty()) {
            svg.path(path, Fill.NONE, pen);
        }
    }

    /** Short strokes along one side of a line from left to right; {@code out} px, negative upward. */
    static void edge(Svg svg, Vec from, Vec to, double out, Pen pen) {
        Vec way = to.minus(from);
        double length = way.norm();
        Vec along = way.times(1 / length);
        Vec across = along.left().times(out);
        PathData path = new PathData();
        double reach = Math.abs(out);
        for (double s = 0; s + reach <= length; s += SPACING - 1) {
            Vec foot = from.plus(along.times(s));
            path.move(foot).line(foot.plus(along.times(reach)).plus(across));
        }
        if (!path.empty()) {
            svg.path(path, Fill.NONE, pen);
        }
    }
}
