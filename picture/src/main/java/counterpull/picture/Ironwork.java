package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Pieces of machines that several sketches draw: discs, stacks, pulleys, pivots. Points in m. */
final class Ironwork {
    private static final double LEAST_DISC = 0.03;
    private static final double MOST_DISC = 0.16;
    private static final double DISC_OF_ONE = 0.036;
    private static final double STACK_HALF = 0.075;
    private static final double STACK = 0.30;
    private final Scene scene;

    Ironwork(Scene scene) {
        this.scene = scene;
    }

    /** Radius of a drawn weight, m: by the cube root of its mass, as solid bodies grow. */
    static double radius(double mass) {
        return Math.max(LEAST_DISC, Math.min(MOST_DISC, DISC_OF_ONE * Math.cbrt(mass)));
    }

    /** A disc with its mass beside it; nothing where there is none. */
    void disc(Vec at, double mass, String name) {
        if (mass <= 0) {
            return;
        }
        Svg svg = scene.svg();
        double radius = scene.sheet().px(radius(mass));
        Vec seen = scene.see(at);
        svg.circle(seen, radius, new Fill(Ink.STEEL, 0.92), Pen.of(Ink.INK, 1));
        svg.circle(seen, radius * 0.84, Fill.NONE, Pen.of(Ink.QUIET, 0.6));
        svg.circle(seen, 2.5, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1));
        ring(seen, radius);
        mass(seen, radius, mass, name);
    }

    private void mass(Vec seen, double radius, double mass, String name) {
        String words = name + " " + scene.wording().mass().brief(mass);
        scene.words().ask(seen.plus(new Vec(0, radius)), new Vec(0, 1), words, Lettering.body(Ink.INK));
    }

    private void ring(Vec centre, double radius) {
        for (int i = 0; i < 24; i++) {
            Vec at = centre.plus(Vec.unit(i * Math.PI / 12).times(radius));
            scene.words().keepOff(at, at);
        }
    }

    /** A point about which something turns, fixed to the ground. */
    void pivot(Vec at) {
        Vec seen = scene.see(at);
        Vec left = seen.plus(new Vec(-9, 13));
        Vec right = seen.plus(new Vec(9, 13));
        PathData foot = new PathData().move(seen).line(left).line(right).close();
        scene.svg().path(foot, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1));
        Hatching.edge(scene.svg(), left, right, 5, Pen.of(Ink.INK, 0.8));
        scene.svg().circle(seen, 4, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1.3));
        scene.words().keepOff(left, right);
        scene.words().keepOff(seen, seen);
    }

    void pulley(Vec at) {
        Vec seen = scene.see(at);
        scene.svg().circle(seen, scene.sheet().px(0.034), Fill.of(Ink.STEEL), Pen.of(Ink.INK, 1.2));
        scene.svg().circle(seen, 2, Fill.of(Ink.INK), Pen.of(Ink.INK, 0));
        ring(seen, scene.sheet().px(0.034));
    }

    /** The height of a stack, m. */
    static double stack() {
        return STACK;
    }

    /** A stack of weights whose middle of the upper edge is given, with its mass. */
    void stack(Vec top, double mass, String name) {
        Vec a = scene.see(top.plus(new Vec(-STACK_HALF, 0)));
        Vec b = scene.see(top.plus(new Vec(STACK_HALF, -STACK)));
        double left = Math.min(a.x(), b.x());
        Box box = new Box(left, a.y(), Math.abs(b.x() - a.x()), b.y() - a.y());
        scene.svg().rect(box, Fill.of(Ink.STEEL), Pen.of(Ink.INK, 1));
        int slabs = 8;
        for (int k = 1; k < slabs; k++) {
            double y = box.top() + k * box.height() / slabs;
            scene.svg().line(new Vec(box.left(), y), new Vec(box.right(), y), Pen.of(Ink.QUIET, 0.7));
        }
        scene.words().take(box);
        Vec below = new Vec(box.left() + box.width() / 2, box.bottom());
        String words = name + " " + scene.wording().mass().brief(mass);
        scene.words().ask(below, new Vec(0, 1), words, Lettering.body(Ink.INK));
    }

    /** The sign for a point that does not move: a hatched line behind it, seen from where the line comes. */
    void fixed(Vec at, Vec from) {
        Vec seen = scene.see(at);
        Vec way = seen.minus(scene.see(from));
        Vec back = way.times(5 / Math.max(1, way.norm()));
        Vec side = back.left().times(2);
        Vec middle = seen.plus(back);
        scene.svg().line(middle.minus(side), middle.plus(side), Pen.of(Ink.INK, 1.4));
        Hatching.edge(scene.svg(), middle.minus(side), middle.plus(side), -5, Pen.of(Ink.INK, 0.8));
        scene.svg().circle(seen, 3.5, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1.3));
        scene.words().keepOff(middle.minus(side), middle.plus(side));
    }

    /** Where a tape is laid to find a point: level and upright from the joint that does not move. */
    void place(Vec at) {
        if (!scene.words().roomy()) {
            return;
        }
        double least = 0.06;
        Vec level = new Vec(0, at.y());
        Pen fine = Pen.of(Ink.QUIET, 0.7).dashed("2 2");
        if (Math.abs(at.x()) > least) {
            dimension(level, at, new Vec(0, at.y() > 0 ? 1 : -1), Math.abs(at.x()));
        }
        if (Math.abs(at.y()) > least) {
            scene.svg().line(scene.see(new Vec(0, 0)), scene.see(level), fine);
            dimension(new Vec(at.x(), 0), at, new Vec(at.x() > 0 ? 1 : -1, 0), Math.abs(at.y()));
            scene.svg().line(scene.see(new Vec(0, 0)), scene.see(new Vec(at.x(), 0)), fine);
        }
    }

    private void dimension(Vec from, Vec to, Vec out, double length) {
        Vec way = scene.sheet().camera().way(out);
        Vec off = way.times(16 / way.norm());
        Vec a = scene.see(from).plus(off);
        Vec b = scene.see(to).plus(off);
        Pen fine = Pen.of(Ink.QUIET, 0.7).dashed("2 2");
        scene.svg().line(scene.see(to), b, fine);
        scene.svg().line(scene.see(from), a, fine);
        String words = scene.wording().length().say(length);
        new DimensionLine(a, b).draw(scene.sheet(), new DimensionLine.Words(words, 0.5, off));
    }
}
