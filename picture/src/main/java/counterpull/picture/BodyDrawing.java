package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;

/**
 * Draws the person: links with real lengths between the result's joints; half widths are shares of stature chosen by eye (no
 * source: they carry no number). The trunk's, head's and arms' lengths are the published or measured ones.
 */
final class BodyDrawing {
    private static final double PELVIS = 0.060;
    private static final double CHEST = 0.064;
    private static final double NECK = 0.028;
    private static final double THIGH_TOP = 0.049;
    private static final double KNEE = 0.032;
    private static final double ANKLE = 0.020;
    private static final double SHOULDER = 0.030;
    private static final double ELBOW = 0.022;
    private static final double WRIST = 0.016;
    private static final double CHIN_ABOVE_SHOULDER = 0.052;
    private static final double HEAD = 0.130;
    private static final double HEAD_HALF_WIDTH = 0.047;
    private final Stage stage;
    private final Build build;

    BodyDrawing(Stage stage) {
        this.stage = stage;
        build = stage.figure().build();
    }

    /** Half the depth of the trunk at hip and chest, m. */
    static double pelvis(Build build) {
        return build.share(PELVIS);
    }

    static double chest(Build build) {
        return build.share(CHEST);
    }

    /** The farthest point of the head from the hip, m. */
    static double toCrown(Build build) {
        return build.trunk() + build.share(CHIN_ABOVE_SHOULDER + HEAD);
    }

    void ghost(int position) {
        Pen pen = Pen.of(Ink.QUIET, 0.8).dashed("3 3").faded(0.75);
        Stage.Look look = new Stage.Look(Fill.NONE, pen);
        stage.svg().open("ghost");
        Posture posture = Posture.of(stage.figure().profile(), stage.figure().limb(), position);
        if (!stage.points().plateRides()) {
            trunk(posture.hip(), look);
        }
        leg(posture, look);
        stage.svg().close();
    }

    void draw() {
        Pen outline = Pen.of(Ink.INK, 1.3);
        Stage.Look body = new Stage.Look(Fill.of(Ink.BODY), outline);
        Posture front = stage.figure().posture();
        stage.svg().open("person");
        far(front);
        trunk(front.hip(), body);
        arm(front.hip(), body);
        leg(front, body);
        stage.svg().close();
    }

    // the limb behind is drawn only where it does not hide behind the one in front
    private void far(Posture front) {
        for (int k = 0; k < stage.figure().profile().limbs().size(); k++) {
            Posture other =
                    Posture.of(stage.figure().profile(), k, stage.figure().position());
            if (k != stage.figure().limb() && other.knee().minus(front.knee()).norm() > 0.004) {
                leg(other, new Stage.Look(Fill.of(Ink.PAPER), Pen.of(Ink.QUIET, 1)));
                side(k, other, Ink.QUIET);
                side(stage.figure().limb(), front, Ink.INK);
            }
        }
    }

    private void side(int limb, Posture posture, Ink ink) {
        PressLimb leg = stage.figure().profile().limbs().get(limb);
        Vec away = stage.camera()
                .way(posture.knee().minus(posture.hip().plus(posture.ankle()).times(0.5)));
        Vec at = stage.see(posture.knee()).plus(away.times(stage.px(build.share(KNEE)) / away.norm()));
        stage.words().askIfRoomy(at, away, leg.side().words(), Lettering.small(ink));
    }

    private void trunk(Vec hip, Stage.Look look) {
        Vec way = stage.points().trunkWay();
        Vec shoulder = hip.plus(way.times(build.trunk()));
        Vec chin = shoulder.plus(way.times(build.share(CHIN_ABOVE_SHOULDER)));
        stage.link(shoulder, chin, build.share(NECK), build.share(NECK), look);
        head(chin.plus(way.times(build.share(HEAD) / 2)), look);
        stage.link(hip, shoulder.minus(way.times(build.share(0.035))), pelvis(build), chest(build), look);
    }

    private void head(Vec middle, Stage.Look look) {
        Vec way = stage.points().trunkWay();
        Vec crown = middle.plus(way.times(build.share(HEAD / 2 - HEAD_HALF_WIDTH)));
        Vec jaw = middle.minus(way.times(build.share(HEAD / 2 - 0.036)))
                .plus(way.left().times(-build.share(0.007)));
        stage.link(crown, jaw, build.share(HEAD_HALF_WIDTH), build.share(0.036), look);
    }

    // the hand holds the seat beside the hip; the elbow falls behind
    private void arm(Vec hip, Stage.Look look) {
        Vec way = stage.points().trunkWay();
        Vec shoulder = hip.plus(way.times(build.trunk() - build.share(0.012)));
        Vec grip = hip.plus(way.left().times(-build.share(0.075))).plus(way.times(build.share(0.02)));
        Vec toGrip = grip.minus(shoulder);
        double distance = Math.min(toGrip.norm(), (build.upperArm() + build.forearm()) * 0.999);
        double a = build.upperArm();
        double b = build.forearm();
        double bend = Math.acos(Math.max(-1, Math.min(1, (a * a + distance * distance - b * b) / (2 * a * distance))));
        Vec elbow = shoulder.plus(
                Vec.unit(Math.atan2(toGrip.y(), toGrip.x()) - bend).times(a));
        stage.link(elbow, grip, build.share(ELBOW), build.share(WRIST), look);
        stage.link(shoulder, elbow, build.share(SHOULDER), build.share(ELBOW), look);
        Vec knuckles = grip.plus(
                grip.minus(elbow).times(build.share(0.035) / grip.minus(elbow).norm()));
        stage.link(grip, knuckles, build.share(WRIST), build.share(0.017), look);
    }

    private void leg(Posture posture, Stage.Look look) {
        foot(posture, look);
        stage.link(posture.knee(), posture.ankle(), build.share(KNEE), build.share(ANKLE), look);
        stage.link(posture.hip(), posture.knee(), build.share(THIGH_TOP), build.share(KNEE), look);
    }

    private void foot(Posture posture, Stage.Look look) {
        Vec along = posture.toe()
                .minus(posture.heel())
                .times(1 / posture.toe().minus(posture.heel()).norm());
        Vec up = along.left();
        double toeHeight = build.share(0.016);
        Vec instep = posture.ankle().plus(along.times(build.share(ANKLE)));
        Vec back = posture.ankle().minus(along.times(build.share(ANKLE * 0.95)));
        Vec toeTop = posture.toe().plus(up.times(toeHeight)).minus(along.times(build.share(0.008)));
        Vec ball = posture.toe().minus(along.times(build.share(0.05))).plus(up.times(build.share(0.024)));
        PathData path = new PathData()
                .move(stage.see(posture.heel()))
                .line(stage.see(posture.toe()))
                .quad(
                        stage.see(posture.toe()
                                .plus(along.times(build.share(0.006)))
                                .plus(up.times(toeHeight))),
                        stage.see(toeTop))
                .quad(stage.see(ball), stage.see(instep))
                .line(stage.see(back))
                .quad(
                        stage.see(posture.heel()
                                .minus(along.times(build.share(0.012)))
                                .plus(up.times(build.share(0.014)))),
                        stage.see(posture.heel()))
                .close();
        stage.svg().path(path, look.fill(), look.pen());
        stage.words().keepOff(stage.see(posture.heel()), stage.see(posture.toe()));
        stage.words().keepOff(stage.see(posture.ankle()), stage.see(posture.toe()));
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
