package counterpull.picture;

import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;

/** Draws the elastic lines: taut ones straight, loose ones sagging with their true length, webbing and links finer than rubber. */
final class RubberDrawing {
    private final Stage stage;
    private final Wording wording;

    RubberDrawing(Stage stage, Wording wording) {
        this.stage = stage;
        this.wording = wording;
    }

    void draw() {
        stage.svg().open("rubber");
        for (LineSeries line : stage.figure().profile().lines()) {
            draw(line);
        }
        stage.svg().close();
    }

    private void draw(LineSeries line) {
        int position = stage.figure().position();
        Vec anchor = stage.see(stage.points().anchor(line.line(), position));
        Vec hook = stage.see(stage.points().attachment(line.line(), position));
        double loose = line.looseness(position);
        if (loose > 0) {
            sagging(anchor, hook, Sag.of(anchor, hook, hanging(line, position)));
        } else {
            taut(anchor, hook, line.line().deadLength() / line.path(position));
        }
        fixed(anchor, hook);
        for (Vec end : new Vec[] {anchor, hook}) {
            stage.svg().circle(end, 3.5, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1.3));
        }
        words(line, anchor, hook);
    }

    // the sign for a point that does not move: a hatched line behind it
    private void fixed(Vec anchor, Vec hook) {
        Vec way = anchor.minus(hook);
        Vec back = way.times(5 / Math.max(1, way.norm()));
        Vec side = back.left().times(2);
        Vec middle = anchor.plus(back);
        stage.svg().line(middle.minus(side), middle.plus(side), Pen.of(Ink.INK, 1.4));
        Hatching.edge(stage.svg(), middle.minus(side), middle.plus(side), -5, Pen.of(Ink.INK, 0.8));
        stage.words().keepOff(middle.minus(side), middle.plus(side));
    }

    // what hangs loose, in the plane of the picture, px: an offset to the side takes its share of the length
    private double hanging(LineSeries line, int position) {
        double length = line.path(position) + line.looseness(position);
        Vec toward = line.toward(position);
        double inPlane = toward.norm() * line.path(position);
        double aside = line.path(position) * line.path(position) - inPlane * inPlane;
        return stage.px(Math.sqrt(length * length - Math.max(0, aside)));
    }

    private void taut(Vec anchor, Vec hook, double deadShare) {
        Vec joint = anchor.plus(hook.minus(anchor).times(Math.min(1, deadShare)));
        stage.svg().line(anchor, joint, Pen.of(Ink.RUBBER, 1.4).dashed("4 2"));
        stage.svg().line(joint, hook, Pen.of(Ink.RUBBER, 4));
        stage.words().keepOff(anchor, hook);
    }

    private void sagging(Vec anchor, Vec hook, Sag sag) {
        PathData path = new PathData().move(anchor).quad(sag.control(), hook);
        stage.svg().path(path, Fill.NONE, Pen.of(Ink.RUBBER, 2.6));
        stage.words().keepOff(anchor, sag.lowest());
        stage.words().keepOff(sag.lowest(), hook);
    }

    private void words(LineSeries line, Vec anchor, Vec hook) {
        int position = stage.figure().position();
        Phase phase = stage.figure().phase();
        double loose = line.looseness(position);
        String state = loose > 0
                ? "loose " + wording.length().say(loose)
                : wording.force().say(line.line().strands() * line.tension(phase, position));
        String tag = Wrap.cut(line.strand().rubber().tag(), 130, Lettering.body(Ink.INK));
        String words = tag + ": " + state;
        Vec middle = loose > 0
                ? Sag.of(anchor, hook, hanging(line, position)).lowest()
                : anchor.times(0.4).plus(hook.times(0.6));
        stage.words().ask(middle, new Vec(0, -1), words, Lettering.body(Ink.INK));
        String name = line.line().ends().anchor().name();
        stage.words()
                .askIfRoomy(
                        anchor,
                        new Vec(0, -1),
                        Wrap.cut(name, 130, Lettering.small(Ink.QUIET)),
                        Lettering.small(Ink.QUIET));
    }
}
