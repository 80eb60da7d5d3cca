package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * A lever machine with weights: plates on horns, counterweight, the lever's own weight, all about a pivot that need not be the
 * joint.
 *
 * <p>Formula: contact force F = −σ (Σ Q)/arm ({@link LeverPath}), Q = −m g r cos(φ + offset) for each weight,
 * −(I + Σ m r²) φ̈ for inertia, −f sgn φ̇ for friction at the pivot; plates as points. N, N·m, m, rad, kg. Held: no friction, no inertia;
 * the loading rows carry their phase's friction also where the speed is zero.
 *
 * <p>Range: whatever {@link LeverFrame} can solve; a lever that helps the lift has a negative force, which a cuff holds and a pad
 * does not. Source: own derivation from the balance of power; docs/notation.md.
 *
 * @param name as a person says it
 * @param frame pivot and contact
 * @param body the lever itself
 * @param horns what hangs on it, on at most one of them the chosen plates
 * @param friction f, torque that rubs at the pivot, N·m, zero or more
 */
public record Lever(String name, LeverFrame frame, LeverBody body, List<Horn> horns, double friction)
        implements Resistance {
    public Lever {
        horns = List.copyOf(horns);
        Require.within(friction, new Require.Limits(0, 1000), "friction at the pivot of the " + name, "N·m");
        long taking = horns.stream().filter(Lever::plates).count();
        if (taking > 1) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "horns of the " + name + " that take the chosen plates",
                    taking,
                    1,
                    "",
                    "only one horn of a lever can take the chosen plates: state a pair at one place as one horn");
        }
    }

    private static boolean plates(Horn horn) {
        return horn.load().plates() == Loaded.Plates.HERE;
    }

    @Override
    public String words() {
        return name;
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        LeverPath lever = frame.over(path);
        List<Share> load = new ArrayList<>(own(lever, gravity));
        for (Horn horn : horns) {
            String label = name + ", " + horn.name();
            double r = horn.radius();
            load.addAll(horn.load().shares(Part.GRAVITY, label, weight(lever, -gravity * r, horn.offset())));
            load.addAll(horn.load().shares(Part.INERTIA, label, lever.timesAcceleration(-r * r)));
        }
        if (friction > 0) {
            load.add(new Share(Part.FRICTION, name + ", pivot", Amount.ONE, rubbing(lever)));
        }
        return lever.pulls(name, load);
    }

    private List<Share> own(LeverPath lever, double gravity) {
        double moment = -body.mass() * gravity * body.comRadius();
        return List.of(
                new Share(Part.GRAVITY, name, Amount.ONE, weight(lever, moment, body.comOffset())),
                new Share(Part.INERTIA, name, Amount.ONE, lever.timesAcceleration(-body.inertia())));
    }

    private static double[] weight(LeverPath lever, double moment, double offset) {
        Course course = lever.course();
        double[] torque = new double[course.cells()];
        for (int i = 0; i < course.positions(); i++) {
            double value = moment * Math.cos(lever.angle(i) + offset);
            for (Phase phase : Phase.values()) {
                torque[course.cell(phase, i)] = value;
            }
        }
        return torque;
    }

    private double[] rubbing(LeverPath lever) {
        Course course = lever.course();
        double[] torque = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < course.positions(); i++) {
                torque[course.cell(phase, i)] = -friction * lever.turning(phase, i);
            }
        }
        return torque;
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        LeverPath lever = frame.over(path);
        Course course = path.course();
        Ledger ledger = Ledger.empty(course);
        double inertia = inertia(plates);
        for (int i = 0; i < course.positions(); i++) {
            double height = height(lever.angle(i), plates);
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                double speed = lever.speed(phase, i);
                ledger.stored()[cell] = gravity * height;
                ledger.kinetic()[cell] = inertia * speed * speed / 2;
                ledger.lost()[cell] = friction * Math.abs(speed);
            }
        }
        return ledger;
    }

    private double inertia(double plates) {
        double sum = body.inertia();
        for (Horn horn : horns) {
            sum += horn.load().mass(plates) * horn.radius() * horn.radius();
        }
        return sum;
    }

    /** Σ m × height above the pivot, kg·m. */
    private double height(double angle, double plates) {
        double sum = body.mass() * body.comRadius() * Math.sin(angle + body.comOffset());
        for (Horn horn : horns) {
            sum += horn.load().mass(plates) * horn.radius() * Math.sin(angle + horn.offset());
        }
        return sum;
    }

    @Override
    public boolean takesPlates() {
        return horns.stream().anyMatch(Lever::plates);
    }

    @Override
    public List<Knob> knobs() {
        return List.of(Knob.mass(name, this::heavier));
    }

    private Lever heavier(double factor) {
        List<Horn> heavier = new ArrayList<>();
        for (Horn horn : horns) {
            heavier.add(new Horn(
                    horn.name(), horn.radius(), horn.offset(), horn.load().times(factor)));
        }
        return new Lever(name, frame, body.heavier(factor), heavier, friction);
    }
}
