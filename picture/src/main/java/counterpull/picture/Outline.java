package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Outlines of links on the picture, px. */
final class Outline {
    private Outline() {}

    /**
     * A rounded end of a link.
     *
     * @param at centre
     * @param radius px
     */
    record End(Vec at, double radius) {}

    /** A link that tapers from one round end to another: their common outer tangents and the arcs outside them. */
    static PathData taper(End from, End to) {
        Vec way = to.at.minus(from.at);
        double length = way.norm();
        double axis = Math.atan2(way.y(), way.x());
        double cos = Math.max(-1, Math.min(1, (from.radius - to.radius) / Math.max(length, 1e-9)));
        double half = Math.acos(cos);
        Vec plus = Vec.unit(axis + half);
        Vec minus = Vec.unit(axis - half);
        return new PathData()
                .move(from.at.plus(plus.times(from.radius)))
                .line(to.at.plus(plus.times(to.radius)))
                .counterClockwise(to.radius, half > Math.PI / 2, to.at.plus(minus.times(to.radius)))
                .line(from.at.plus(minus.times(from.radius)))
                .counterClockwise(from.radius, half < Math.PI / 2, from.at.plus(plus.times(from.radius)))
                .close();
    }

    /** A bar of even width with round ends. */
    static PathData bar(Vec from, Vec to, double radius) {
        return taper(new End(from, radius), new End(to, radius));
    }
}
