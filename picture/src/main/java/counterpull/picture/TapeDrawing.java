package counterpull.picture;

import counterpull.engine.load.LeverFrame;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Draws where a tape is laid on the limb: from the joint along its segment to each point where something acts. */
final class TapeDrawing {
    private static final double LEAST = 0.04;
    private static final double ASIDE = 26;
    private final Scene scene;
    private final List<Touch> touches;

    TapeDrawing(Scene scene, List<Touch> touches) {
        this.scene = scene;
        this.touches = touches;
    }

    void draw() {
        List<BodyPoint> done = new ArrayList<>();
        scene.svg().open("tape");
        for (Touch touch : touches) {
            if (laid(touch) && !done.contains(touch.at())) {
                done.add(touch.at());
                tape(touch, done.size());
            }
        }
        scene.svg().close();
    }

    private boolean laid(Touch touch) {
        boolean force = touch.kind() == Hit.Kind.FORCE;
        return force && !scene.work().hangs(touch.at()) && touch.at().at().x() > LEAST;
    }

    // on the side that the force comes from; to a pad that rolls the tape is laid along its lever
    private void tape(Touch touch, int row) {
        int i = scene.position();
        Vec end = touch.place(scene.work(), i);
        Vec start = touch.roller()
                .map(LeverFrame::pivot)
                .orElseGet(() -> scene.work().joint(touch.at().segment(), i));
        Vec way = touch.roller().isPresent()
                ? end.minus(start).times(1 / end.minus(start).norm())
                : Vec.unit(scene.work().path().direction(touch.at().segment(), i));
        double length = end.minus(start).dot(way);
        double turn = touch.force(scene.phase(), i).dot(way.left()) > 0 ? -1 : 1;
        Vec across = scene.sheet().camera().way(way.left().times(turn));
        Vec out = across.times((ASIDE + 18 * row) / across.norm());
        Vec a = scene.see(start);
        Vec b = scene.see(start.plus(way.times(length)));
        Pen fine = Pen.of(Ink.QUIET, 0.7).dashed("2 2");
        scene.svg().line(a, a.plus(out.times(1.12)), fine);
        scene.svg().line(b, b.plus(out.times(1.12)), fine);
        String words = scene.wording().length().say(length);
        new DimensionLine(a.plus(out), b.plus(out)).draw(scene.sheet(), new DimensionLine.Words(words, 0.5, out));
    }
}
