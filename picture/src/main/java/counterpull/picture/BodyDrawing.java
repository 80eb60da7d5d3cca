package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;

/**
 * Draws the person: links with real lengths between the result's joints; half widths are shares of stature chosen by eye (no
 * source: they carry no number). The trunk's, head's and arms' lengths are the published or measured ones.
 */
final class BodyDrawing {
    private final Stage stage;
    private final BodyPieces pieces;

    BodyDrawing(Stage stage) {
        this.stage = stage;
        pieces = new BodyPieces(stage.sheet(), stage.figure().build());
    }

    void ghost(int position) {
        stage.svg().open("ghost");
        Posture posture = Posture.of(stage.figure().profile(), stage.figure().limb(), position);
        if (!stage.points().plateRides()) {
            pieces.trunk(posture.hip(), stage.points().trunkWay(), Sheet.Look.GHOST);
        }
        pieces.leg(posture, Sheet.Look.GHOST);
        stage.svg().close();
    }

    void draw() {
        Sheet.Look body = Sheet.Look.BODY;
        Posture front = stage.figure().posture();
        stage.svg().open("person");
        far(front);
        Vec way = stage.points().trunkWay();
        pieces.trunk(front.hip(), way, body);
        pieces.restingArm(front.hip(), way, body);
        pieces.leg(front, body);
        stage.svg().close();
    }

    // the limb behind is drawn only where it does not hide behind the one in front
    private void far(Posture front) {
        for (int k = 0; k < stage.figure().profile().limbs().size(); k++) {
            Posture other =
                    Posture.of(stage.figure().profile(), k, stage.figure().position());
            if (k != stage.figure().limb() && other.knee().minus(front.knee()).norm() > 0.004) {
                pieces.leg(other, Sheet.Look.BEHIND);
                side(k, other, Ink.QUIET);
                side(stage.figure().limb(), front, Ink.INK);
            }
        }
    }

    private void side(int limb, Posture posture, Ink ink) {
        PressLimb leg = stage.figure().profile().limbs().get(limb);
        Vec away = stage.camera()
                .way(posture.knee().minus(posture.hip().plus(posture.ankle()).times(0.5)));
        Vec at = stage.see(posture.knee())
                .plus(away.times(stage.px(BodyPieces.knee(stage.figure().build())) / away.norm()));
        stage.words().askIfRoomy(at, away, leg.side().words(), Lettering.small(ink));
    }

    /** Centre lines and joints, drawn over everything else. */
    void joints() {
        Posture posture = stage.figure().posture();
        Pen centre = Pen.of(Ink.INK, 0.8).dashed("9 3 2 3");
        stage.svg().open("posture");
        stage.line(posture.hip(), posture.knee(), centre);
        stage.line(posture.knee(), posture.ankle(), centre);
        stage.svg().close();
        stage.svg().open("joints");
        for (Joint joint : Joint.LEG) {
            boolean chosen = stage.figure().joint().filter(j -> j == joint).isPresent();
            Fill fill = Fill.of(chosen ? Marker.ink(joint) : Ink.PAPER);
            stage.svg().circle(stage.see(posture.at(joint)), chosen ? 5 : 4, fill, Pen.of(Ink.INK, 1.5));
        }
        stage.svg().close();
    }
}
