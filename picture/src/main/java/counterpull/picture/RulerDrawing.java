package counterpull.picture;

import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;

/** Draws the tape along the rail, its numbers, the stops, and the pointer at the present reading. */
final class RulerDrawing {
    private static final double NUMBER_ROOM = 34;
    private static final double TICK_ROOM = 3.5;
    private final Stage stage;
    private final SledShape shape;
    private final Unit unit;

    RulerDrawing(Stage stage, SledShape shape, Unit unit) {
        this.stage = stage;
        this.shape = shape;
        this.unit = unit;
    }

    void draw() {
        stage.svg().open("tape");
        double from = stage.points().markAtPointer(shape.railFrom() + 0.02);
        double to = stage.points().markAtPointer(shape.railTo() - 0.02);
        double low = unit.of(Math.min(from, to));
        double high = unit.of(Math.max(from, to));
        double length = stage.px(shape.railTo() - shape.railFrom());
        ticks(Ticks.within(low, high, (int) (length / TICK_ROOM)), 5);
        Ticks numbered = Ticks.within(low, high, Math.max(2, (int) (length / NUMBER_ROOM)));
        ticks(numbered, 9);
        numbers(numbered);
        stops();
        pointer();
        stage.svg().close();
    }

    private Vec at(double reading) {
        return stage.see(shape.onRail(stage.points().pointerAtMark(reading * unit.size())));
    }

    /** One px across the rail, away from the person. */
    private Vec below() {
        Vec way = stage.camera().way(new Vec(0, -1));
        return way.times(1 / way.norm());
    }

    private double edge() {
        return stage.px(0.012);
    }

    private void ticks(Ticks ticks, double length) {
        for (int i = 0; i < ticks.count(); i++) {
            Vec foot = at(ticks.at(i)).plus(below().times(edge()));
            stage.svg().line(foot, foot.plus(below().times(length)), Pen.of(Ink.INK, 0.7));
        }
    }

    private void numbers(Ticks ticks) {
        for (int i = 0; i < ticks.count(); i++) {
            Vec middle = at(ticks.at(i)).plus(below().times(edge() + 19));
            Lettering small = Lettering.small(Ink.INK).aligned(Lettering.Align.MIDDLE);
            Vec baseline = middle.plus(new Vec(0, 4));
            stage.svg().text(baseline, ticks.label(i), small);
            stage.words().take(Box.of(baseline, ticks.label(i), small));
        }
    }

    private void stops() {
        PressProfile profile = stage.figure().profile();
        double bottom = profile.mark(0);
        for (double mark : profile.task().sled().stops().marks()) {
            double along = stage.points().pointerAtMark(mark);
            if (along >= shape.railFrom() && along <= shape.railTo()) {
                stop(along, Math.abs(mark - bottom) < 1e-6);
            }
        }
    }

    private void stop(double along, boolean set) {
        Vec half = new Vec(0.010, 0);
        Vec low = shape.onRail(along);
        Vec high = low.plus(new Vec(0, set ? 0.055 : 0.035));
        PathData block = new PathData()
                .move(stage.see(low.minus(half)))
                .line(stage.see(low.plus(half)))
                .line(stage.see(high.plus(half)))
                .line(stage.see(high.minus(half)))
                .close();
        stage.svg().path(block, Fill.of(set ? Ink.ACCENT : Ink.PAPER), Pen.of(set ? Ink.ACCENT : Ink.QUIET, 1));
        stage.words().keepOff(stage.see(low), stage.see(high));
        if (set) {
            String words = "stop at " + unit.say(stage.points().markAtPointer(along));
            stage.words().ask(stage.see(high), stage.camera().way(new Vec(-1, 1)), words, Lettering.body(Ink.ACCENT));
        }
    }

    private void pointer() {
        int position = stage.figure().position();
        Vec tip = stage.see(shape.onRail(stage.points().pointer(position))).plus(below().times(edge()));
        Vec side = below().left().times(6);
        PathData wedge = new PathData()
                .move(tip)
                .line(tip.plus(below().times(12)).plus(side))
                .line(tip.plus(below().times(12)).minus(side))
                .close();
        stage.svg().path(wedge, Fill.of(Ink.ACCENT), Pen.of(Ink.PAPER, 0.8));
        stage.words().keepOff(tip, tip.plus(below().times(12)));
        String words = "mark " + unit.say(stage.figure().profile().mark(position));
        Lettering large = Lettering.body(Ink.ACCENT).bold().sized(stage.words().strong() + 4);
        stage.words().ask(tip.plus(below().times(14)), below(), words, large);
    }
}
