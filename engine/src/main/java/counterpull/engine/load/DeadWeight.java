package counterpull.engine.load;

import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A weight that rides on a point of the body: a cuff, a dumbbell, a bar. Force on the body m(g − a), a the point's own acceleration;
 * a point mass, without inertia of its own.
 *
 * @param name as a person says it ("cuff", "bar")
 * @param at where it rides
 * @param mass kg; all of it for both limbs, of which each bears its share
 */
public record DeadWeight(String name, BodyPoint at, Loaded mass) implements Resistance {
    @Override
    public String words() {
        return name;
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        Course course = path.course();
        PointTrack track = path.track(at);
        double[] weight = new double[course.cells()];
        java.util.Arrays.fill(weight, -gravity);
        double[] inertiaX = new double[course.cells()];
        double[] inertiaY = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                Vec a = track.acceleration(course, phase, i);
                inertiaX[course.cell(phase, i)] = -a.x();
                inertiaY[course.cell(phase, i)] = -a.y();
            }
        }
        return List.of(
                along(path, new Vec(0, 1), List.of(share(Part.GRAVITY, weight), share(Part.INERTIA, inertiaY))),
                along(path, new Vec(1, 0), List.of(share(Part.INERTIA, inertiaX))));
    }

    private record PerKilogram(Part part, double[] force) {}

    private static PerKilogram share(Part part, double[] force) {
        return new PerKilogram(part, force);
    }

    private Pull along(ChainPath path, Vec way, List<PerKilogram> forces) {
        double[][] direction = new double[path.positions()][];
        for (int i = 0; i < direction.length; i++) {
            direction[i] = new double[] {way.x(), way.y()};
        }
        List<Share> shares = new ArrayList<>();
        for (PerKilogram force : forces) {
            shares.addAll(mass.shares(force.part(), name, force.force()));
        }
        return Pull.force(name, at, direction, Pull.Holds.BOTH_WAYS, shares);
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        Course course = path.course();
        PointTrack track = path.track(at);
        double m = mass.mass(plates);
        Ledger ledger = Ledger.empty(course);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                Vec v = track.velocity(course, phase, i);
                int cell = course.cell(phase, i);
                ledger.stored()[cell] = m * gravity * track.at(i).y();
                ledger.kinetic()[cell] = m * v.dot(v) / 2;
            }
        }
        return ledger;
    }

    @Override
    public List<Motion.Carried> carried(double plates) {
        return List.of(new Motion.Carried(at, mass.mass(plates)));
    }

    @Override
    public boolean takesPlates() {
        return mass.plates() == Loaded.Plates.HERE;
    }

    @Override
    public List<Knob> knobs() {
        return List.of(Knob.mass(name, factor -> new DeadWeight(name, at, mass.times(factor))));
    }
}
