package counterpull.picture;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A person seen from the side, facing right where they stand: the limb from the result, the rest as people usually sit, lie or stand. */
final class BodyFromSide implements WholeBody {
    private static final double STUB = 0.42;
    private final Limbwork work;
    private final Build build;
    private final Setting setting;

    /**
     * What else it is made of.
     *
     * @param leg lengths of the leg
     * @param gravity of the plane, m/s²
     * @param held what the hands of somebody who stands hold at the trunk (a bar on the back); empty where they hang
     */
    record Setting(Leg leg, double gravity, Optional<BodyPoint> held) {}

    BodyFromSide(Limbwork work, Build build, Setting setting) {
        this.work = work;
        this.build = build;
        this.setting = setting;
    }

    private boolean ofArm() {
        return work.fixed() == Joint.SHOULDER || work.fixed() == Joint.ELBOW;
    }

    /** Direction hip → shoulder. */
    private double trunk(int i) {
        if (work.stands()) {
            return work.path().direction(work.path().segments() - 1, i);
        }
        return switch (work.fixed()) {
            case KNEE -> Rest.trunkOver(work.before());
            case ANKLE -> Rest.trunkOver(work.before());
            case ELBOW -> Math.PI / 2;
            default -> work.before();
        };
    }

    private Vec hip(int i) {
        if (work.stands()) {
            return work.joint(work.path().segments() - 1, i);
        }
        return switch (work.fixed()) {
            case KNEE, ANKLE ->
                knee(i).minus(Vec.unit(work.before()).times(setting.leg.thigh().length()));
            case SHOULDER, ELBOW -> shoulder().minus(Vec.unit(trunk(i)).times(build.trunk()));
            default -> new Vec(0, 0);
        };
    }

    private Vec shoulder() {
        return work.fixed() == Joint.SHOULDER
                ? new Vec(0, 0)
                : Vec.unit(work.before()).times(-build.upperArm());
    }

    private Vec knee(int i) {
        return switch (work.fixed()) {
            case KNEE -> new Vec(0, 0);
            case HIP -> work.joint(1, i);
            default ->
                work.stands()
                        ? work.joint(1, i)
                        : Vec.unit(work.before()).times(-setting.leg.shank().length());
        };
    }

    private Posture leg(int i) {
        int ankle = work.path().index(Joint.ANKLE);
        Vec at = work.joint(ankle, i);
        double along = work.stands() ? 0 : work.path().direction(ankle, i);
        return foot(hip(i), knee(i), at, along);
    }

    private Posture foot(Vec hip, Vec knee, Vec ankle, double direction) {
        Foot foot = setting.leg.foot();
        Vec along = Vec.unit(direction);
        Vec heel =
                ankle.plus(along.times(-foot.ankleFromHeel())).plus(along.left().times(-foot.ankleHeight()));
        return new Posture(hip, knee, ankle, heel, heel.plus(along.times(foot.length())), ankle);
    }

    @Override
    public List<Vec> extent(int i) {
        List<Vec> points = new ArrayList<>();
        Vec way = Vec.unit(trunk(i));
        Vec hip = hip(i);
        around(points, hip, BodyPieces.pelvis(build));
        around(points, hip.plus(way.times(BodyPieces.toCrown(build) - 0.08)), 0.08);
        if (ofArm()) {
            points.add(hip.minus(way.times(STUB * setting.leg.thigh().length())));
            for (int k = 0; k <= work.path().segments(); k++) {
                around(points, work.joint(k, i), 0.06);
            }
        } else {
            Posture leg = leg(i);
            for (Vec point : List.of(leg.knee(), leg.ankle(), leg.heel(), leg.toe())) {
                around(points, point, 0.05);
            }
        }
        return points;
    }

    private static void around(List<Vec> points, Vec at, double by) {
        points.add(at.plus(new Vec(by, by)));
        points.add(at.minus(new Vec(by, by)));
    }

    @Override
    public void rest(Sheet sheet, int i) {
        BodyPieces pieces = new BodyPieces(sheet, build);
        Vec way = Vec.unit(trunk(i));
        if (ofArm()) {
            stub(sheet, hip(i), way.times(-1));
        }
        if (!work.stands()) {
            pieces.trunk(hip(i), way, Sheet.Look.REST);
            if (!ofArm()) {
                arm(pieces, hip(i), way);
            }
        }
        supports(sheet, i);
    }

    // sitting or standing the hand holds on beside the hip, lying the arm lies along the trunk
    private void arm(BodyPieces pieces, Vec hip, Vec way) {
        if (Math.abs(way.x()) < 0.75) {
            pieces.restingArm(hip, way, Sheet.Look.REST);
            return;
        }
        Vec shoulder = hip.plus(way.times(build.trunk() - build.share(0.012)));
        Vec elbow = shoulder.minus(way.times(build.upperArm()));
        pieces.arm(shoulder, elbow, elbow.minus(way.times(build.forearm())), Sheet.Look.REST);
    }

    // the legs of somebody whose arm is looked at: broken off, since the result does not say how they stand or sit
    private void stub(Sheet sheet, Vec hip, Vec way) {
        double length = STUB * setting.leg.thigh().length();
        Vec end = hip.plus(way.times(length));
        double half = build.share(0.043);
        sheet.link(hip, end, build.share(0.049), half, Sheet.Look.REST);
        Vec side = way.left().times(half * 1.25);
        Vec a = sheet.see(end.plus(side));
        Vec b = sheet.see(end.minus(side));
        Vec over = sheet.camera().way(way.times(half * 1.6));
        sheet.svg()
                .path(
                        new PathData()
                                .move(a)
                                .line(b)
                                .line(b.plus(over))
                                .line(a.plus(over))
                                .close(),
                        Fill.of(Ink.PAPER),
                        Pen.of(Ink.PAPER, 0));
        Vec wave = sheet.camera().way(way.times(0.022));
        Vec middle = a.plus(b).times(0.5);
        PathData breaking = new PathData()
                .move(a)
                .quad(a.plus(middle).times(0.5).plus(wave), middle)
                .quad(b.plus(middle).times(0.5).minus(wave), b);
        sheet.svg().path(breaking, Fill.NONE, Pen.of(Ink.QUIET, 1));
    }

    private void supports(Sheet sheet, int i) {
        if (setting.gravity == 0) {
            return;
        }
        if (work.stands()) {
            floor(sheet, leg(i));
            return;
        }
        sheet.svg().open("support");
        Vec hip = hip(i);
        Vec shoulder = hip.plus(Vec.unit(trunk(i)).times(build.trunk()));
        if (!Rest.upright(trunk(i))) {
            Support.under(sheet, hip, shoulder, BodyPieces.chest(build));
        }
        if (work.fixed() == Joint.HIP && leans(trunk(i))) {
            Vec half = new Vec(BodyPieces.pelvis(build) * 1.5, 0);
            Support.under(sheet, hip.minus(half), hip.plus(half), BodyPieces.pelvis(build));
        }
        if (work.fixed() == Joint.KNEE || work.fixed() == Joint.ANKLE) {
            thigh(sheet, hip, knee(i));
        }
        if (work.fixed() == Joint.ELBOW && !Rest.upright(work.before())) {
            Support.under(sheet, shoulder(), new Vec(0, 0), BodyPieces.knee(build));
        }
        sheet.svg().close();
    }

    // between upright and lying: somebody sits
    private static boolean leans(double trunk) {
        return !Rest.upright(trunk) && Math.abs(Math.sin(trunk)) > 0.3;
    }

    private void thigh(Sheet sheet, Vec hip, Vec knee) {
        Vec way = knee.minus(hip);
        if (!Rest.upright(Math.atan2(way.y(), way.x()))) {
            Vec back = hip.minus(way.times(BodyPieces.pelvis(build) / way.norm()));
            Support.under(sheet, back, hip.plus(way.times(0.86)), BodyPieces.pelvis(build));
        }
    }

    private void floor(Sheet sheet, Posture leg) {
        double y = leg.heel().y();
        sheet.svg().open("support");
        Support.line(
                sheet,
                sheet.see(new Vec(leg.heel().x() - 0.35, y)),
                sheet.see(new Vec(leg.toe().x() + 0.35, y)));
        sheet.svg().close();
    }

    @Override
    public void limb(Sheet sheet, int i, Sheet.Look look) {
        BodyPieces pieces = new BodyPieces(sheet, build);
        if (ofArm()) {
            int wrist = work.path().segments();
            pieces.arm(shoulder(), work.joint(wrist - 1, i), work.joint(wrist, i), look);
            return;
        }
        pieces.leg(leg(i), look);
        if (work.stands()) {
            Vec way = Vec.unit(trunk(i));
            pieces.trunk(hip(i), way, look);
            Vec shoulder = work.joint(work.path().segments(), i);
            Vec hanging = shoulder.plus(new Vec(0, -build.upperArm() - build.forearm()));
            Vec hand = setting.held.map(point -> work.point(point, i)).orElse(hanging);
            pieces.reachingArm(shoulder, hand, look);
        }
    }

    @Override
    public String seenFrom() {
        return setting.gravity == 0 ? "level plane, seen from above" : "";
    }
}
