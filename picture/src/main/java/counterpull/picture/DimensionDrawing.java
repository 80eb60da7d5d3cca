package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws the dimension from hip to plate along the rail, and the scale bar. */
final class DimensionDrawing {
    private static final double LONGEST_BAR = 110;
    private final Stage stage;
    private final SledShape shape;
    private final Wording wording;

    DimensionDrawing(Stage stage, SledShape shape, Wording wording) {
        this.stage = stage;
        this.shape = shape;
        this.wording = wording;
    }

    private Vec below() {
        Vec way = stage.camera().way(new Vec(0, -1));
        return way.times(1 / way.norm());
    }

    void draw() {
        int position = stage.figure().position();
        Vec hip = stage.points().hip(position);
        Vec plate = stage.points().plate(position);
        // the engine measures from the hip's nominal place: a soft seat's shift is not in the distance
        double start = plate.x() - stage.figure().profile().plate(position);
        Vec from = stage.see(new Vec(start, shape.dimensionAcross()));
        Vec to = stage.see(new Vec(plate.x(), shape.dimensionAcross()));
        Pen fine = Pen.of(Ink.QUIET, 0.7);
        stage.svg().open("dimension");
        stage.svg().line(stage.see(hip), from.plus(below().times(5)), fine.dashed("2 2"));
        stage.svg().line(stage.see(shape.plateLow(position)), to.plus(below().times(5)), fine.dashed("2 2"));
        stage.svg().line(from, to, Pen.of(Ink.INK, 0.9));
        Vec way = to.minus(from);
        CurveDrawing.arrow(
                stage.svg(), to.minus(way.times(6 / way.norm())), way, new CurveDrawing.ArrowHead(6, Ink.INK));
        CurveDrawing.arrow(
                stage.svg(),
                from.plus(way.times(6 / way.norm())),
                way.times(-1),
                new CurveDrawing.ArrowHead(6, Ink.INK));
        stage.words().keepOff(from, to);
        words(from, to);
        stage.svg().close();
    }

    private void words(Vec from, Vec to) {
        String words = "hip to plate "
                + wording.length()
                        .say(stage.figure().profile().plate(stage.figure().position()));
        Lettering lettering = Lettering.body(Ink.INK).aligned(Lettering.Align.MIDDLE);
        Vec way = to.minus(from);
        double degrees = Math.toDegrees(Math.atan2(way.y(), way.x()));
        Vec middle = from.times(0.38)
                .plus(to.times(0.62))
                .plus(below().times(shape.dimensionAcross() > shape.railAcross() ? -5 : 13));
        stage.svg().turned(middle, degrees, words, lettering);
        double half = TextSize.width(words, lettering) / 2;
        Vec along = way.times(1 / way.norm());
        for (double s = -half; s <= half; s += 6) {
            Vec at = middle.plus(along.times(s));
            stage.words().take(new Box(at.x() - 6, at.y() - 10, 12, 14));
        }
    }

    /** A bar of a round length, and what the push arrow's length means. */
    void scale(Box picture, double newtonsPerMetre) {
        Unit unit = wording.length();
        Ticks ticks = Ticks.within(0, unit.of(Math.min(LONGEST_BAR, picture.width() / 6) / stage.px(1)), 4);
        double length = ticks.high() * unit.size();
        Vec right = new Vec(picture.right() - 14, picture.bottom() - 14);
        Vec left = right.minus(new Vec(stage.px(length), 0));
        Pen pen = Pen.of(Ink.QUIET, 1);
        stage.svg().open("scale");
        stage.svg().line(left, right, pen);
        for (Vec end : new Vec[] {left, right}) {
            stage.svg().line(end.plus(new Vec(0, -4)), end.plus(new Vec(0, 4)), pen);
        }
        String words = unit.brief(length) + " = " + wording.force().say(length * newtonsPerMetre) + " of push";
        Lettering small = Lettering.small(Ink.QUIET).aligned(Lettering.Align.END);
        stage.svg().text(left.plus(new Vec(-8, 4)), words, small);
        stage.words().take(Box.of(left.plus(new Vec(-8, 4)), words, small));
        stage.words().take(new Box(left.x(), left.y() - 5, stage.px(length), 10));
        stage.svg().close();
    }
}
