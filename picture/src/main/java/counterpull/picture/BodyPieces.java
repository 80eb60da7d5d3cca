package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * Outlines of the body's parts seen from its side, between the joints of a result; half widths are shares of stature chosen by eye (no
 * source: they carry no number).
 */
final class BodyPieces {
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
    private final Sheet sheet;
    private final Build build;

    BodyPieces(Sheet sheet, Build build) {
        this.sheet = sheet;
        this.build = build;
    }

    /** Half the depth of the trunk at hip and chest, m. */
    static double pelvis(Build build) {
        return build.share(PELVIS);
    }

    static double knee(Build build) {
        return build.share(KNEE);
    }

    static double chest(Build build) {
        return build.share(CHEST);
    }

    /** The farthest point of the head from the hip, m. */
    static double toCrown(Build build) {
        return build.trunk() + build.share(CHIN_ABOVE_SHOULDER + HEAD);
    }

    /** Trunk and head; {@code way} is the unit vector from hip to shoulder, the front lies to its right. */
    void trunk(Vec hip, Vec way, Sheet.Look look) {
        Vec shoulder = hip.plus(way.times(build.trunk()));
        Vec chin = shoulder.plus(way.times(build.share(CHIN_ABOVE_SHOULDER)));
        sheet.link(shoulder, chin, build.share(NECK), build.share(NECK), look);
        head(chin.plus(way.times(build.share(HEAD) / 2)), way, look);
        sheet.link(hip, shoulder.minus(way.times(build.share(0.035))), pelvis(build), chest(build), look);
    }

    private void head(Vec middle, Vec way, Sheet.Look look) {
        Vec crown = middle.plus(way.times(build.share(HEAD / 2 - HEAD_HALF_WIDTH)));
        Vec jaw = middle.minus(way.times(build.share(HEAD / 2 - 0.036)))
                .plus(way.left().times(-build.share(0.007)));
        sheet.link(crown, jaw, build.share(HEAD_HALF_WIDTH), build.share(0.036), look);
    }

    /**
     * Where a neck starts.
     *
     * @param shoulders the middle between the shoulders, m
     * @param way unit vector toward the head
     */
    record Neck(Vec shoulders, Vec way) {}

    /** Neck and head seen from the front, resting. */
    static void head(Sheet sheet, Build build, Neck neck) {
        Vec chin = neck.shoulders.plus(neck.way.times(build.share(CHIN_ABOVE_SHOULDER)));
        sheet.link(neck.shoulders, chin, build.share(NECK), build.share(NECK), Sheet.Look.REST);
        Vec jaw = chin.plus(neck.way.times(build.share(0.034)));
        Vec crown = chin.plus(neck.way.times(build.share(HEAD - HEAD_HALF_WIDTH + 0.005)));
        sheet.link(crown, jaw, build.share(HEAD_HALF_WIDTH - 0.004), build.share(0.034), Sheet.Look.REST);
    }

    /** An arm whose hand holds the seat beside the hip; the elbow falls behind. */
    void restingArm(Vec hip, Vec way, Sheet.Look look) {
        Vec shoulder = hip.plus(way.times(build.trunk() - build.share(0.012)));
        Vec grip = hip.plus(way.left().times(-build.share(0.075))).plus(way.times(build.share(0.02)));
        arm(shoulder, elbow(shoulder, grip, -1), grip, look);
    }

    /** An arm from the shoulder to where its hand is, of two postures the one with the lower elbow. */
    void reachingArm(Vec shoulder, Vec hand, Sheet.Look look) {
        Vec one = elbow(shoulder, hand, -1);
        Vec other = elbow(shoulder, hand, 1);
        arm(shoulder, one.y() < other.y() ? one : other, hand, look);
    }

    private Vec elbow(Vec shoulder, Vec hand, int side) {
        Vec toHand = hand.minus(shoulder);
        double a = build.upperArm();
        double b = build.forearm();
        double distance = Math.max(Math.abs(a - b) + 0.01, Math.min(toHand.norm(), (a + b) * 0.999));
        double bend = Math.acos(Math.max(-1, Math.min(1, (a * a + distance * distance - b * b) / (2 * a * distance))));
        double toward = Math.atan2(toHand.y(), toHand.x());
        return shoulder.plus(Vec.unit(toward + side * bend).times(a));
    }

    /** Upper arm, forearm and a closed hand. */
    void arm(Vec shoulder, Vec elbow, Vec wrist, Sheet.Look look) {
        sheet.link(elbow, wrist, build.share(ELBOW), build.share(WRIST), look);
        sheet.link(shoulder, elbow, build.share(SHOULDER), build.share(ELBOW), look);
        Vec knuckles = wrist.plus(
                wrist.minus(elbow).times(build.share(0.035) / wrist.minus(elbow).norm()));
        sheet.link(wrist, knuckles, build.share(WRIST), build.share(0.017), look);
    }

    /** Thigh, shank and foot. */
    void leg(Posture posture, Sheet.Look look) {
        foot(posture, look);
        sheet.link(posture.knee(), posture.ankle(), build.share(KNEE), build.share(ANKLE), look);
        sheet.link(posture.hip(), posture.knee(), build.share(THIGH_TOP), build.share(KNEE), look);
    }

    private void foot(Posture posture, Sheet.Look look) {
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
                .move(sheet.see(posture.heel()))
                .line(sheet.see(posture.toe()))
                .quad(
                        sheet.see(posture.toe()
                                .plus(along.times(build.share(0.006)))
                                .plus(up.times(toeHeight))),
                        sheet.see(toeTop))
                .quad(sheet.see(ball), sheet.see(instep))
                .line(sheet.see(back))
                .quad(
                        sheet.see(posture.heel()
                                .minus(along.times(build.share(0.012)))
                                .plus(up.times(build.share(0.014)))),
                        sheet.see(posture.heel()))
                .close();
        sheet.svg().path(path, look.fill(), look.pen());
        sheet.words().keepOff(sheet.see(posture.heel()), sheet.see(posture.toe()));
        sheet.words().keepOff(sheet.see(posture.ankle()), sheet.see(posture.toe()));
    }
}
