package counterpull.picture;

import counterpull.engine.planar.Vec;

/** Draws the dimension from hip to plate along the rail, and the scale bar. */
final class DimensionDrawing {
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
        String words =
                "hip to plate " + wording.length().say(stage.figure().profile().plate(position));
        Vec out = below().times(shape.dimensionAcross() > shape.railAcross() ? -1 : 1);
        new DimensionLine(from, to).draw(stage.sheet(), new DimensionLine.Words(words, 0.62, out));
        stage.svg().close();
    }

    /** A bar of a round length, and what the push arrow's length means. */
    void scale(Box picture, double newtonsPerMetre) {
        ScaleBar.draw(
                stage.sheet(),
                picture,
                wording,
                length -> " = " + wording.force().say(length * newtonsPerMetre) + " of push");
    }
}
