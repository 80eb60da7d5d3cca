package counterpull.picture;

import counterpull.engine.load.Horn;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LeverPath;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A lever: its pivot, its bar to the pad or cuff, and discs on its horns.
 *
 * @param frame pivot and contact
 * @param horns what hangs on it
 * @param plates chosen plates, kg
 */
record LeverSketch(LeverFrame frame, List<Horn> horns, double plates) implements Sketch {
    private static final double PAD = 0.035;
    private static final double LIMB = 0.045;

    private static Vec horn(LeverPath lever, Horn horn, int i) {
        return lever.frame()
                .pivot()
                .plus(Vec.unit(lever.angle(i) + horn.offset()).times(horn.radius()));
    }

    // the engine has the pad's surface on the limb's middle line: it is drawn beside the limb
    private static Vec pad(LeverPath lever, int i) {
        return lever.frame().contact().staysOnLimb()
                ? lever.contact(i)
                : lever.contact(i).minus(lever.direction(i).times(PAD + LIMB));
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        LeverPath lever = frame.over(work.path());
        List<Vec> points = new ArrayList<>();
        points.add(frame.pivot().minus(new Vec(0.03, 0.06)));
        points.add(pad(lever, position));
        for (Horn horn : horns) {
            Vec radius = new Vec(1, 1).times(Ironwork.radius(horn.load().mass(plates)));
            points.add(horn(lever, horn, position).plus(radius));
            points.add(horn(lever, horn, position).minus(radius));
        }
        return points;
    }

    @Override
    public void behind(Scene scene) {
        // all of a lever stands in front
    }

    @Override
    public void front(Scene scene) {
        LeverPath lever = frame.over(scene.work().path());
        horns(scene, lever);
        Vec pad = pad(lever, scene.position());
        scene.sheet().link(frame.pivot(), pad, 0.014, 0.010, Sheet.Look.STEEL);
        Vec seen = scene.see(pad);
        scene.svg().circle(seen, scene.sheet().px(PAD), Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1.3));
        scene.svg().circle(seen, 2, Fill.of(Ink.INK), Pen.of(Ink.INK, 0));
        Ironwork iron = new Ironwork(scene);
        iron.pivot(frame.pivot());
        iron.place(frame.pivot());
        scene.words().askIfRoomy(scene.see(frame.pivot()), new Vec(0, 1), "pivot", Lettering.small(Ink.QUIET));
    }

    private void horns(Scene scene, LeverPath lever) {
        for (Horn horn : horns) {
            Vec at = horn(lever, horn, scene.position());
            scene.sheet().link(frame.pivot(), at, 0.012, 0.010, Sheet.Look.STEEL);
            new Ironwork(scene).disc(at, horn.load().mass(plates), horn.name());
        }
    }
}
