package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A person seen along the trunk from the head, in the axes of a left arm whose upper arm lies along it: shoulders, head, and the forearm
 * that turns. In a level plane somebody who stands or sits, seen from above; in an upright one somebody who lies on the side.
 */
final class BodyFromAbove implements WholeBody {
    private static final double SHOULDER_FROM_MIDDLE = 0.110;
    private static final double HEAD = 0.052;
    private final Limbwork work;
    private final Build build;
    private final double gravity;

    BodyFromAbove(Limbwork work, Build build, double gravity) {
        this.work = work;
        this.build = build;
        this.gravity = gravity;
    }

    private boolean lies() {
        return gravity > 0;
    }

    private Vec ahead() {
        return Vec.unit(work.before());
    }

    private Vec middle() {
        return ahead().left().times(-build.share(SHOULDER_FROM_MIDDLE));
    }

    @Override
    public List<Vec> extent(int i) {
        List<Vec> points = new ArrayList<>();
        double wide = build.share(SHOULDER_FROM_MIDDLE + 0.07);
        points.add(middle().plus(new Vec(wide, wide)));
        points.add(middle().minus(new Vec(wide, wide)));
        Vec hand = work.joint(1, i);
        points.add(hand.plus(new Vec(0.1, 0.1)));
        points.add(hand.minus(new Vec(0.1, 0.1)));
        return points;
    }

    @Override
    public void rest(Sheet sheet, int i) {
        Vec across = ahead().left().times(build.share(SHOULDER_FROM_MIDDLE));
        double chest = BodyPieces.chest(build);
        sheet.link(middle().minus(across), middle().plus(across), chest * 0.85, chest * 0.85, Sheet.Look.REST);
        if (lies()) {
            bench(sheet);
        }
        Vec face = middle().plus(ahead().times(build.share(HEAD * 0.3)));
        Vec nose = face.plus(ahead().times(build.share(HEAD + 0.016)));
        Vec cheek = ahead().left().times(build.share(0.013));
        Vec root = face.plus(ahead().times(build.share(HEAD - 0.004)));
        PathData wedge = new PathData()
                .move(sheet.see(root.plus(cheek)))
                .line(sheet.see(nose))
                .line(sheet.see(root.minus(cheek)));
        sheet.svg().path(wedge, Fill.of(Ink.BODY), Pen.of(Ink.QUIET, 1));
        sheet.svg().circle(sheet.see(face), sheet.px(build.share(HEAD)), Fill.of(Ink.BODY), Pen.of(Ink.QUIET, 1));
    }

    // level, under the lowest point of the shoulders
    private void bench(Sheet sheet) {
        Vec across = ahead().left().times(build.share(SHOULDER_FROM_MIDDLE));
        double low = middle().y() - Math.abs(across.y()) - BodyPieces.chest(build) * 0.85;
        double half = build.share(0.16);
        Vec a = sheet.see(new Vec(middle().x() - half, low));
        Vec b = sheet.see(new Vec(middle().x() + half, low));
        Support.line(sheet, a, b);
    }

    @Override
    public void limb(Sheet sheet, int i, Sheet.Look look) {
        Vec elbow = work.joint(0, i);
        Vec wrist = work.joint(1, i);
        Vec way =
                wrist.minus(elbow).times(build.share(0.035) / wrist.minus(elbow).norm());
        sheet.link(elbow, wrist, build.share(0.026), build.share(0.016), look);
        sheet.link(wrist, wrist.plus(way), build.share(0.016), build.share(0.017), look);
    }

    @Override
    public String seenFrom() {
        return lies() ? "seen from the head" : "level plane, seen from above";
    }
}
