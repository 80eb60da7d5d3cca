package counterpull.picture;

import counterpull.engine.load.Cable;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A cable over its pulley, with the stack beside it.
 *
 * @param cable the cable
 * @param plates chosen plates, kg
 */
record CableSketch(Cable cable, double plates) implements Sketch {
    private static final double BESIDE = 0.24;
    private static final double RADIUS = 0.034;

    // beside the pulley, away from the person; above a low pulley, below a high one
    private Vec stackTop(Limbwork work) {
        double away = cable.pulley().x() >= work.drawn(cable.at(), 0).x() ? 1 : -1;
        boolean low = cable.pulley().y() < 0;
        return cable.pulley().plus(new Vec(away * BESIDE, low ? Ironwork.stack() + 0.06 : -0.12));
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        Vec top = stackTop(work);
        Vec low = top.plus(new Vec(0, -Ironwork.stack() - 0.08));
        Vec half = new Vec(0.1, 0);
        return List.of(cable.pulley(), top.plus(half), low.plus(half), top.minus(half), low.minus(half));
    }

    @Override
    public void behind(Scene scene) {
        Ironwork iron = new Ironwork(scene);
        Vec top = stackTop(scene.work());
        double over = Math.max(cable.pulley().y() + RADIUS, top.y() + 0.05);
        Vec turn = new Vec(
                cable.pulley().x() + Math.signum(top.x() - cable.pulley().x()) * RADIUS, over);
        Pen thin = Pen.of(Ink.INK, 1.2);
        scene.sheet().line(new Vec(turn.x(), cable.pulley().y()), turn, thin);
        scene.sheet().line(turn, new Vec(top.x(), over), thin);
        scene.sheet().line(new Vec(top.x(), over), top, thin);
        iron.stack(top, cable.line().stack().mass(plates), "stack");
    }

    @Override
    public void front(Scene scene) {
        scene.sheet().line(scene.work().drawn(cable.at(), scene.position()), cable.pulley(), Pen.of(Ink.INK, 1.4));
        Ironwork iron = new Ironwork(scene);
        iron.pulley(cable.pulley());
        iron.place(cable.pulley());
        scene.words().askIfRoomy(scene.see(cable.pulley()), new Vec(0, 1), "pulley", Lettering.small(Ink.QUIET));
    }
}
