package counterpull.picture;

import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;

/** Draws the machine: floor, posts, rail, seat, plate, carriage and plates. */
final class SledDrawing {
    private static final Pen EDGE = Pen.of(Ink.INK, 1);
    private static final Sheet.Look STEEL = Sheet.Look.STEEL;
    private static final double RAIL_HALF = 0.012;
    private static final double STACK_HALF = 0.08;
    private static final double STACK_TALL = 0.45;
    private static final double STACK_TOWER = 1.1;
    private static final double STACK_RISE = 0.25;
    private final Stage stage;
    private final SledShape shape;

    SledDrawing(Stage stage, SledShape shape) {
        this.stage = stage;
        this.shape = shape;
    }

    void draw() {
        stage.svg().open("sled");
        floor();
        rail();
        if (stage.points().plateRides()) {
            seatPost();
        }
        carriage();
        seat();
        plate();
        stage.svg().close();
    }

    private void floor() {
        Vec left = stage.camera().floorUnder(leftmost());
        Vec right = stage.camera().floorUnder(shape.onRail(shape.railTo()));
        Vec from = left.plus(new Vec(-6, 0));
        Vec to = right.plus(new Vec(6, 0));
        stage.svg().line(from, to, Pen.of(Ink.INK, 1));
        Hatching.edge(stage.svg(), from, to, 6, Pen.of(Ink.QUIET, 0.6));
        stage.words().keepOff(from, to);
    }

    private Vec leftmost() {
        Vec seat = shape.backTo(stage.points().hip(stage.figure().profile().positions() - 1));
        Vec rail = shape.onRail(shape.railFrom());
        return stage.see(seat).x() < stage.see(rail).x() ? seat : rail;
    }

    private void rail() {
        Vec from = shape.onRail(shape.railFrom());
        Vec to = shape.onRail(shape.railTo());
        post(from.plus(new Vec(0.05, 0)));
        post(to.minus(new Vec(0.05, 0)));
        stage.link(from, to, RAIL_HALF, RAIL_HALF, STEEL);
    }

    private void post(Vec top) {
        Vec seen = stage.see(top);
        Vec foot = stage.camera().floorUnder(top);
        double half = stage.px(0.018);
        Box box = new Box(seen.x() - half, seen.y(), 2 * half, Math.max(0, foot.y() - seen.y()));
        stage.svg().rect(box, Fill.of(Ink.STEEL), EDGE);
        stage.words().keepOff(seen, foot);
    }

    private void seatPost() {
        Vec hip = stage.points().hip(0);
        post(shape.panFrom(hip).plus(shape.panTo(hip)).times(0.5));
        post(shape.backFrom(hip).times(0.35).plus(shape.backTo(hip).times(0.65)));
    }

    private void seat() {
        Vec hip = stage.points().hip(stage.figure().position());
        stage.link(shape.backFrom(hip), shape.backTo(hip), SledShape.PAD, SledShape.PAD, STEEL);
        stage.link(shape.panFrom(hip), shape.panTo(hip), SledShape.PAD, SledShape.PAD, STEEL);
    }

    private void plate() {
        int position = stage.figure().position();
        Vec behind = stage.points().plateWay().left().times(-0.014);
        Vec low = shape.plateLow(position).plus(behind);
        Vec high = shape.plateHigh(position).plus(behind);
        if (!stage.points().plateRides()) {
            post(low.plus(high).times(0.5).plus(new Vec(0.02, 0)));
        }
        stage.link(low, high, 0.014, 0.014, STEEL);
    }

    void ghostPlate(int position) {
        if (stage.points().plateRides()) {
            Pen pen = Pen.of(Ink.QUIET, 0.8).dashed("3 3").faded(0.75);
            stage.line(shape.plateLow(position), shape.plateHigh(position), pen);
        }
    }

    private void carriage() {
        int position = stage.figure().position();
        Vec front = shape.roller(position, 0);
        Vec rear = shape.roller(position, 0.38);
        strut(front, rear, 0.014);
        if (stage.points().plateRides()) {
            Vec low = shape.plateLow(position)
                    .times(0.8)
                    .plus(shape.plateHigh(position).times(0.2));
            Vec high = shape.plateLow(position)
                    .times(0.3)
                    .plus(shape.plateHigh(position).times(0.7));
            strut(low.plus(new Vec(0.02, 0)), front, 0.010);
            strut(high.plus(new Vec(0.02, 0)), rear, 0.010);
        } else {
            Vec hip = stage.points().hip(position);
            strut(shape.panFrom(hip), rear, 0.010);
            strut(shape.backTo(hip).plus(shape.backFrom(hip)).times(0.5), front, 0.010);
        }
        for (Vec roller : new Vec[] {front, rear}) {
            stage.svg().circle(stage.see(roller), stage.px(0.024), Fill.of(Ink.PAPER), EDGE);
        }
        if (stage.figure().profile().task().sled().platesRide()) {
            discs(position);
        } else {
            stack(position);
        }
    }

    /** The line from what rides, over pulleys under the seat, up to the stack behind it; where the tower stands is a convention. */
    private void stack(int position) {
        Pen line = Pen.of(Ink.INK, 1);
        double lift = stage.figure().profile().ground().motion().fraction(position) * STACK_RISE;
        Vec foot = shape.stackFoot();
        Vec low = new Vec(foot.x(), shape.railAcross());
        Vec high = foot.plus(new Vec(0, STACK_TOWER));
        Vec pulled = stage.points().plateRides() ? shape.roller(position, 0) : shape.onRail(shape.railTo());
        stage.line(pulled, low, line);
        stage.line(low, high, line);
        Vec second = high.plus(new Vec(-STACK_HALF * 2, 0));
        stage.line(high, second, line);
        Vec top = new Vec(second.x(), foot.y() + STACK_TALL + lift);
        stage.line(second, top, line);
        stage.link(new Vec(top.x(), top.y() - STACK_TALL), top, STACK_HALF, STACK_HALF, STEEL);
        for (Vec pulley : new Vec[] {low, high, second}) {
            stage.svg().circle(stage.see(pulley), stage.px(0.03), Fill.of(Ink.PAPER), EDGE);
        }
    }

    private void strut(Vec from, Vec to, double half) {
        PathData bar = Outline.bar(stage.see(from), stage.see(to), stage.px(half));
        stage.svg().path(bar, STEEL.fill(), STEEL.pen());
    }

    private void discs(int position) {
        PressProfile profile = stage.figure().profile();
        Vec horn = stage.see(shape.horn(position));
        boolean any = profile.loading().plates() > 0;
        if (any) {
            Fill fill = new Fill(Ink.STEEL, 0.9);
            stage.svg().circle(horn, stage.px(SledShape.DISC), fill, EDGE);
            stage.svg().circle(horn, stage.px(SledShape.DISC * 0.86), Fill.NONE, Pen.of(Ink.QUIET, 0.6));
            ring(horn, stage.px(SledShape.DISC));
        }
        stage.svg().circle(horn, stage.px(0.025), Fill.of(Ink.PAPER), EDGE);
    }

    private void ring(Vec centre, double radius) {
        for (int i = 0; i < 40; i++) {
            Vec at = centre.plus(Vec.unit(i * Math.PI / 20).times(radius));
            stage.words().keepOff(at, at);
        }
    }

    /** What is on the sled, in words beside it. */
    void words(Wording wording) {
        PressProfile profile = stage.figure().profile();
        double mass = profile.loading().plates();
        if (!profile.task().sled().platesRide()) {
            Vec tower = stage.see(shape.stackFoot().plus(new Vec(-STACK_HALF * 2, STACK_TALL / 2)));
            stage.words()
                    .ask(
                            tower,
                            new Vec(-1, 0),
                            "stack " + wording.mass().brief(mass),
                            Lettering.body(Ink.INK).bold());
            return;
        }
        Vec horn = stage.see(shape.horn(stage.figure().position()));
        String plates = mass > 0 ? "plates " + wording.mass().brief(mass) : "no plates";
        Lettering bold = Lettering.body(Ink.INK).bold();
        Vec at = horn.plus(new Vec(0, stage.px(0.025) + 16));
        Box inside = Box.of(at, plates, bold.aligned(Lettering.Align.MIDDLE));
        if (inside.width() < stage.px(1.7 * SledShape.DISC) && stage.words().free(inside)) {
            stage.svg().text(at, plates, bold.aligned(Lettering.Align.MIDDLE));
            stage.words().take(inside);
        } else {
            stage.words().ask(horn.plus(new Vec(0, stage.px(SledShape.DISC))), new Vec(0, 1), plates, bold);
        }
    }
}
