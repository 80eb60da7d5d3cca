package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A person seen from the front, in the axes of a left limb (its own side is to the right of the picture). Breadths are shares of stature:
 * shoulders and hips by eye (no source: they carry no number).
 */
final class BodyFromFront implements WholeBody {
    private static final double SHOULDER_FROM_MIDDLE = 0.110;
    private static final double HIP_FROM_MIDDLE = 0.050;
    private static final double STUB = 0.4;
    private final Limbwork work;
    private final Build build;
    private final Leg leg;

    BodyFromFront(Limbwork work, Build build, Leg leg) {
        this.work = work;
        this.build = build;
        this.leg = leg;
    }

    private boolean ofLeg() {
        return work.fixed() == Joint.HIP_SIDEWAYS;
    }

    private Vec up() {
        return Vec.unit(work.before());
    }

    /** Toward the limb's own side. */
    private Vec out() {
        return up().left().times(-1);
    }

    private Vec pelvis() {
        return ofLeg() ? out().times(-build.share(HIP_FROM_MIDDLE)) : chest().minus(up().times(build.trunk()));
    }

    private Vec chest() {
        return ofLeg() ? pelvis().plus(up().times(build.trunk())) : out().times(-build.share(SHOULDER_FROM_MIDDLE));
    }

    private double toAnkle() {
        return leg.thigh().length() + leg.shank().length();
    }

    @Override
    public List<Vec> extent(int i) {
        List<Vec> points = new ArrayList<>();
        Vec side = out().times(build.share(SHOULDER_FROM_MIDDLE + 0.04));
        points.add(chest().plus(up().times(BodyPieces.toCrown(build) - build.trunk() + 0.02)));
        for (Vec edge : new Vec[] {side, side.times(-1)}) {
            points.add(chest().plus(edge));
            points.add(pelvis().plus(edge));
        }
        points.add(pelvis().minus(up().times(
                        ofLeg() ? toAnkle() + 0.09 : STUB * leg.thigh().length())));
        for (int k = 0; k <= work.path().segments(); k++) {
            points.add(work.joint(k, i).plus(new Vec(0.06, 0.06)));
            points.add(work.joint(k, i).minus(new Vec(0.06, 0.06)));
        }
        return points;
    }

    @Override
    public void rest(Sheet sheet, int i) {
        Vec hips = out().times(build.share(HIP_FROM_MIDDLE));
        Vec shoulders = out().times(build.share(SHOULDER_FROM_MIDDLE));
        arm(sheet, chest().minus(shoulders));
        if (ofLeg()) {
            arm(sheet, chest().plus(shoulders));
            straightLeg(
                    sheet,
                    pelvis().minus(hips),
                    pelvis().minus(hips).minus(up().times(toAnkle() + leg.foot().ankleHeight())),
                    Sheet.Look.BEHIND);
        } else {
            stub(sheet, pelvis().minus(hips));
            stub(sheet, pelvis().plus(hips));
        }
        trunk(sheet);
        if (!Rest.upright(work.before())) {
            Support.under(sheet, pelvis().minus(up().times(0.1)), chest(), build.share(SHOULDER_FROM_MIDDLE + 0.045));
        }
    }

    private void arm(Sheet sheet, Vec shoulder) {
        Vec down = up().times(-1);
        Vec elbow = shoulder.plus(down.times(build.upperArm()));
        new BodyPieces(sheet, build).arm(shoulder, elbow, elbow.plus(down.times(build.forearm())), Sheet.Look.BEHIND);
    }

    private void stub(Sheet sheet, Vec hip) {
        Vec end = hip.minus(up().times(STUB * leg.thigh().length()));
        double half = build.share(0.042);
        Vec side = out().times(half);
        PathData thigh = new PathData()
                .move(sheet.see(hip.minus(side)))
                .line(sheet.see(end.minus(side)))
                .quad(sheet.see(end.minus(side.times(0.5)).minus(up().times(0.02))), sheet.see(end))
                .quad(sheet.see(end.plus(side.times(0.5)).plus(up().times(0.02))), sheet.see(end.plus(side)))
                .line(sheet.see(hip.plus(side)));
        sheet.svg().path(thigh, Fill.of(Ink.PAPER), Pen.of(Ink.QUIET, 1));
    }

    private void trunk(Sheet sheet) {
        BodyPieces.head(sheet, build, new BodyPieces.Neck(chest(), up()));
        Vec shoulder = out().times(build.share(SHOULDER_FROM_MIDDLE + 0.015));
        Vec waist = out().times(build.share(0.078));
        Vec hip = out().times(build.share(0.095));
        Vec top = chest().plus(up().times(build.share(0.012)));
        Vec middle = pelvis().plus(up().times(0.35 * build.trunk()));
        Vec low = pelvis().minus(up().times(build.share(0.03)));
        PathData outline = new PathData()
                .move(sheet.see(top.minus(shoulder)))
                .quad(sheet.see(chest().plus(up().times(build.share(0.05)))), sheet.see(top.plus(shoulder)))
                .quad(sheet.see(middle.plus(waist)), sheet.see(low.plus(hip)))
                .quad(sheet.see(low.minus(up().times(0.03))), sheet.see(low.minus(hip)))
                .quad(sheet.see(middle.minus(waist)), sheet.see(top.minus(shoulder)))
                .close();
        sheet.svg().path(outline, Fill.of(Ink.BODY), Pen.of(Ink.QUIET, 1));
        sheet.words().keepOff(sheet.see(pelvis()), sheet.see(chest()));
        sheet.words().keepOff(sheet.see(low.plus(hip)), sheet.see(top.plus(shoulder)));
        sheet.words().keepOff(sheet.see(low.minus(hip)), sheet.see(top.minus(shoulder)));
    }

    @Override
    public void limb(Sheet sheet, int i, Sheet.Look look) {
        if (ofLeg()) {
            straightLeg(sheet, work.joint(0, i), work.joint(1, i), look);
        } else {
            int wrist = work.path().segments();
            new BodyPieces(sheet, build).arm(new Vec(0, 0), work.joint(1, i), work.joint(wrist, i), look);
        }
    }

    private void straightLeg(Sheet sheet, Vec hip, Vec sole, Sheet.Look look) {
        Vec way = sole.minus(hip).times(1 / sole.minus(hip).norm());
        Vec knee = hip.plus(way.times(leg.thigh().length()));
        Vec ankle = hip.plus(way.times(toAnkle()));
        sheet.link(ankle, sole.minus(way.times(0.02)), build.share(0.02), build.share(0.026), look);
        sheet.link(knee, ankle, BodyPieces.knee(build), build.share(0.02), look);
        sheet.link(hip, knee, build.share(0.045), BodyPieces.knee(build), look);
    }

    @Override
    public String seenFrom() {
        return "seen from the front";
    }
}
