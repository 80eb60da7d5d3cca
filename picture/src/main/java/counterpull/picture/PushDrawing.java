package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;

/** Draws the push: its arrow to scale from the centre of pressure, and a chosen joint's moment arm and torque. */
final class PushDrawing {
    /** Length of the arrow of the largest push of a result at most, m. */
    static final double LONGEST_ARROW = 0.42;

    private final Stage stage;
    private final Wording wording;
    private final PressProfile profile;
    private final PressLimb limb;

    PushDrawing(Stage stage, Wording wording) {
        this.stage = stage;
        this.wording = wording;
        profile = stage.figure().profile();
        limb = profile.limbs().get(stage.figure().limb());
    }

    /** Newtons that one metre of arrow stands for: one scale for every position and phase of a result, a round number. */
    static double newtonsPerMetre(PressProfile profile) {
        double most = 1;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                most = Math.max(most, profile.force(phase, i));
            }
        }
        return Ticks.covering(0, most / LONGEST_ARROW, 2).high();
    }

    private Vec way() {
        return Vec.unit(limb.pushAngle(stage.figure().phase(), stage.figure().position()));
    }

    void draw() {
        stage.svg().open("push");
        stage.figure().joint().ifPresent(this::arm);
        arrow();
        stage.svg().close();
    }

    private void arrow() {
        Vec from = stage.figure().posture().pressure();
        double force = profile.force(stage.figure().phase(), stage.figure().position());
        double along = Math.max(1e-6, way().x());
        Vec to = from.plus(way().times(force / along / newtonsPerMetre(profile)));
        Vec tip = stage.see(to);
        Vec back = stage.camera().way(way());
        Vec unit = back.times(1 / back.norm());
        stage.svg().line(stage.see(from), tip.minus(unit.times(9)), Pen.of(Ink.INK, 3));
        CurveDrawing.arrow(stage.svg(), tip.minus(unit.times(8)), unit, new CurveDrawing.ArrowHead(9, Ink.INK));
        stage.svg().circle(stage.see(from), 3, Fill.of(Ink.INK), Pen.of(Ink.PAPER, 1));
        stage.words().keepOff(stage.see(from), tip);
        String whose = profile.limbs().size() > 1 ? ", both legs" : "";
        String words = "push " + wording.force().say(force) + whose;
        stage.words()
                .ask(
                        tip,
                        stage.camera().way(new Vec(0.4, 1)),
                        words,
                        Lettering.body(Ink.INK).sized(stage.words().strong()).bold());
    }

    private void arm(Joint joint) {
        Vec at = stage.figure().posture().at(joint);
        Vec from = stage.figure().posture().pressure();
        Vec foot = from.plus(way().times(at.minus(from).dot(way())));
        Ink ink = Marker.ink(joint);
        Vec past = foot.minus(way().times(0.06));
        Vec start = past.minus(from).dot(way()) < 0 ? past : from;
        stage.line(start, from, Pen.of(Ink.INK, 0.9).dashed("8 3 2 3"));
        stage.line(at, foot, Pen.of(ink, 1.6));
        corner(foot, at, ink);
        turn(joint, at, ink);
        double arm =
                limb.momentArm(joint, stage.figure().phase(), stage.figure().position());
        Vec middle = stage.see(at.plus(foot).times(0.5));
        stage.words()
                .askIfRoomy(
                        middle,
                        stage.camera().way(new Vec(-1, 0)),
                        "arm " + wording.length().say(arm),
                        Lettering.body(Ink.INK));
    }

    private void corner(Vec foot, Vec joint, Ink ink) {
        Vec up = joint.minus(foot);
        if (up.norm() < 0.03) {
            return;
        }
        Vec a = up.times(0.018 / up.norm());
        Vec b = way().times(0.018);
        PathData square = new PathData()
                .move(stage.see(foot.plus(a)))
                .line(stage.see(foot.plus(a).plus(b)))
                .line(stage.see(foot.plus(b)));
        stage.svg().path(square, Fill.NONE, Pen.of(ink, 1));
    }

    // turning the way the muscles turn the distal segment
    private void turn(Joint joint, Vec at, Ink ink) {
        double torque =
                limb.torque(joint, stage.figure().phase(), stage.figure().position());
        double sense = Math.signum(torque) * joint.senseOfAction();
        Posture posture = stage.figure().posture();
        Vec distal = joint == Joint.HIP ? posture.knee() : joint == Joint.KNEE ? posture.ankle() : posture.toe();
        new TurnArc(at, distal.minus(at), sense).draw(stage.sheet(), ink);
        String words = (torque >= 0 ? joint.action() : joint.opposite()).words() + " "
                + wording.torque().say(Math.abs(torque));
        Vec side = stage.camera().way(at.minus(posture.pressure()));
        stage.words()
                .ask(
                        stage.see(at),
                        side,
                        words,
                        Lettering.body(Ink.INK).sized(stage.words().strong()).bold());
    }
}
