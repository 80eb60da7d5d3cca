package counterpull.picture;

import counterpull.engine.load.DeadWeight;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A weight that rides on the body: a disc with its mass.
 *
 * @param weight the weight
 * @param plates chosen plates, kg
 */
record WeightSketch(DeadWeight weight, double plates) implements Sketch {
    private double mass() {
        return weight.mass().mass(plates);
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        Vec at = work.drawn(weight.at(), position);
        Vec radius = new Vec(1, 1).times(Ironwork.radius(mass()));
        return List.of(at.plus(radius), at.minus(radius));
    }

    @Override
    public void behind(Scene scene) {
        // a disc stands in front
    }

    @Override
    public void front(Scene scene) {
        new Ironwork(scene).disc(scene.work().drawn(weight.at(), scene.position()), mass(), weight.name());
    }
}
