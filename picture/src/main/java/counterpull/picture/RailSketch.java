package counterpull.picture;

import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Loaded;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A mass on a rail: the rail over the point's travel, and the mass as a disc at the point.
 *
 * @param guided the mass
 * @param plates chosen plates, kg
 */
record RailSketch(GuidedMass guided, double plates) implements Sketch {
    private static final double BEYOND = 0.12;

    private double mass() {
        return new Loaded(guided.carriage().mass(), guided.plates()).mass(plates);
    }

    // along the rail through the point at the bottom
    private Vec end(Limbwork work, int position, double sign) {
        Vec rail = Vec.unit(guided.railAngle());
        Vec bottom = work.point(guided.at(), 0);
        Vec top = work.point(guided.at(), work.last());
        double a = 0;
        double b = top.minus(bottom).dot(rail);
        double reach = sign > 0 ? Math.max(a, b) + BEYOND : Math.min(a, b) - BEYOND;
        return bottom.plus(rail.times(reach));
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        return List.of(end(work, position, 1), end(work, position, -1));
    }

    @Override
    public void behind(Scene scene) {
        Vec low = end(scene.work(), scene.position(), -1);
        Vec high = end(scene.work(), scene.position(), 1);
        scene.sheet().link(low, high, 0.010, 0.010, Sheet.Look.STEEL);
        scene.words().askIfRoomy(scene.see(high), new Vec(1, 0), "rail", Lettering.small(Ink.QUIET));
    }

    @Override
    public void front(Scene scene) {
        Vec rail = Vec.unit(guided.railAngle());
        Vec bottom = scene.work().point(guided.at(), 0);
        Vec at = scene.work().point(guided.at(), scene.position());
        Vec riding = bottom.plus(rail.times(at.minus(bottom).dot(rail)));
        new Ironwork(scene).disc(riding, mass(), guided.name());
    }
}
