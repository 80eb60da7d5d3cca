package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.planar.Vec;

/** A small shape on a curve, so that colour is never alone. */
public enum Marker {
    NONE,
    SQUARE,
    CIRCLE,
    TRIANGLE,
    DIAMOND,
    CROSS,
    /** An arrow upward from a foot: this or more. */
    UP;

    /** The marker of a joint: hip square, knee circle, ankle triangle, shoulder diamond, elbow cross. */
    static Marker of(Joint joint) {
        return switch (joint) {
            case HIP, HIP_SIDEWAYS -> SQUARE;
            case KNEE -> CIRCLE;
            case ANKLE -> TRIANGLE;
            case SHOULDER, SHOULDER_SIDEWAYS, SHOULDER_TURNING -> DIAMOND;
            case ELBOW -> CROSS;
        };
    }

    /** The hue of a joint; an arm's joints share those of a leg's, since no chart holds both. */
    static Ink ink(Joint joint) {
        return switch (joint) {
            case HIP, HIP_SIDEWAYS, SHOULDER, SHOULDER_SIDEWAYS, SHOULDER_TURNING -> Ink.HIP;
            case KNEE, ELBOW -> Ink.KNEE;
            case ANKLE -> Ink.ANKLE;
        };
    }

    void draw(Svg svg, Vec at, double r, Ink ink) {
        Pen rim = Pen.of(Ink.PAPER, 1);
        switch (this) {
            case NONE -> {}
            case CIRCLE -> svg.circle(at, r, Fill.of(ink), rim);
            case SQUARE -> svg.rect(new Box(at.x() - r, at.y() - r, 2 * r, 2 * r), Fill.of(ink), rim);
            case TRIANGLE -> svg.path(polygon(at, r * 1.25, 3, -Math.PI / 2), Fill.of(ink), rim);
            case DIAMOND -> svg.path(polygon(at, r * 1.25, 4, 0), Fill.of(ink), rim);
            case CROSS -> {
                svg.line(at.plus(new Vec(-r, -r)), at.plus(new Vec(r, r)), Pen.of(ink, 1.6));
                svg.line(at.plus(new Vec(-r, r)), at.plus(new Vec(r, -r)), Pen.of(ink, 1.6));
            }
            case UP -> up(svg, at, r, ink);
        }
    }

    private static void up(Svg svg, Vec at, double r, Ink ink) {
        Vec head = at.plus(new Vec(0, -4.5 * r));
        svg.line(at.plus(new Vec(-r, 0)), at.plus(new Vec(r, 0)), Pen.of(ink, 1.8));
        svg.line(at, head, Pen.of(ink, 1.8));
        svg.path(polygon(head, r * 1.1, 3, -Math.PI / 2), Fill.of(ink), Pen.of(Ink.PAPER, 1));
    }

    private static PathData polygon(Vec at, double r, int corners, double from) {
        PathData path = new PathData();
        for (int i = 0; i < corners; i++) {
            Vec corner = at.plus(Vec.unit(from + 2 * Math.PI * i / corners).times(r));
            path = i == 0 ? path.move(corner) : path.line(corner);
        }
        return path.close();
    }
}
