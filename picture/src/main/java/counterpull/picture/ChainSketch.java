package counterpull.picture;

import counterpull.engine.load.HangingChain;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A chain that hangs to the floor, the rest of its links on the ground.
 *
 * @param chain the chain
 */
record ChainSketch(HangingChain chain) implements Sketch {
    private static final double LINK = 0.03;
    private static final int ROW = 9;

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        Vec top = work.point(chain.top(), position);
        return List.of(new Vec(top.x() - 0.2, chain.floor() - 0.03), new Vec(top.x() + 0.2, chain.floor() - 0.03));
    }

    @Override
    public void behind(Scene scene) {
        Vec top = scene.work().point(chain.top(), scene.position());
        Vec left = scene.see(new Vec(top.x() - 0.25, chain.floor()));
        Vec right = scene.see(new Vec(top.x() + 0.25, chain.floor()));
        Support.line(scene.sheet(), left.x() < right.x() ? left : right, left.x() < right.x() ? right : left);
    }

    @Override
    public void front(Scene scene) {
        Vec top = scene.work().point(chain.top(), scene.position());
        double clear = Math.min(chain.length(), top.y() - chain.floor());
        int hanging = (int) Math.rint(clear / LINK);
        for (int k = 0; k < hanging; k++) {
            link(scene, top.minus(new Vec(0, (k + 0.5) * LINK)));
        }
        Vec end = top.minus(new Vec(0, clear));
        scene.words().keepOff(scene.see(top), scene.see(end));
        lying(scene, end, (int) Math.rint((chain.length() - clear) / LINK));
        String words = chain.name() + ": " + scene.wording().length().say(clear) + " hangs, "
                + scene.wording().mass().say(chain.perMetre() * clear);
        Vec middle = scene.see(top.plus(end).times(0.5));
        scene.words().ask(middle, new Vec(1, 0), words, Lettering.body(Ink.INK));
    }

    private void lying(Scene scene, Vec foot, int links) {
        for (int k = 0; k < links; k++) {
            int row = k / ROW;
            double x = (k % ROW - (ROW - 1) / 2.0 + row % 2 * 0.5) * 0.022;
            link(scene, foot.plus(new Vec(x, 0.010 + row * 0.014)));
        }
    }

    private static void link(Scene scene, Vec at) {
        scene.svg().circle(scene.see(at), Math.max(1.6, scene.sheet().px(0.010)), Fill.NONE, Pen.of(Ink.INK, 1.1));
    }
}
