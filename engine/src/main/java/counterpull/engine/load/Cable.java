package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.Require;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A cable from a weight stack through a fixed pulley to a point of the body.
 *
 * <p>Formula: tension = k·m(g + l̈/R)/R + m_moving·l̈, N, toward the pulley; l the length of line from the point to the pulley, m, which
 * grows as the stack rises. k = 1 ± friction by the cable's <em>own</em> motion, for it can run in while the person lifts; at zero speed by
 * the sign of dl/ds in the phase; 1 held. Sign: positive pulls. Range: the point 1 cm or more from the pulley; a stack that would go slack is
 * refused (see {@link StackLine}). Source: {@link StackLine}; the length's derivatives from the point's track.
 *
 * <p>Neglected: the pulley's own radius (the line leaves it at one point), the cable's weight and stretch. Check: worked example F.
 *
 * @param name as a person says it ("low cable")
 * @param at where it is hooked on
 * @param pulley where the line leaves the last pulley, from the fixed joint, m
 * @param line the stack, its pulleys and friction
 */
public record Cable(String name, BodyPoint at, Vec pulley, StackLine line) implements Resistance {
    private static final Require.Limits ROOM = new Require.Limits(-10, 10);

    public Cable {
        Require.within(pulley.x(), ROOM, "pulley of " + name + ", forward of the fixed joint", "m");
        Require.within(pulley.y(), ROOM, "pulley of " + name + ", above the fixed joint", "m");
    }

    @Override
    public String words() {
        return name;
    }

    private Drawn drawn(ChainPath path) {
        return new Drawn(path.track(at), pulley, name);
    }

    /** What the cable pulls; {@code gravity} of the plane does not count: the stack hangs upright in any case. */
    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        Course course = path.course();
        Drawn drawn = drawn(path);
        double[] rise = new double[course.cells()];
        double[] acceleration = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                rise[cell] = drawn.sense(phase, i);
                acceleration[cell] = drawn.acceleration(course, phase, i);
            }
        }
        List<Share> shares = line.pull(name, rise, acceleration);
        return List.of(Pull.force(name, at, drawn.toward(), Pull.Holds.ONE_WAY, shares));
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        Course course = path.course();
        Drawn drawn = drawn(path);
        double m = line.stack().mass(plates);
        Ledger ledger = Ledger.empty(course);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                double speed = drawn.speed(course, phase, i);
                double pull = line.perKilogram(drawn.acceleration(course, phase, i));
                ledger.stored()[cell] = m * Constants.STANDARD_GRAVITY * drawn.length(i) / line.ratio();
                ledger.kinetic()[cell] = line.feltMass(plates) * speed * speed / 2;
                ledger.lost()[cell] = line.friction() * m * pull * Math.abs(speed);
            }
        }
        return ledger;
    }

    @Override
    public boolean takesPlates() {
        return line.stack().plates() == Loaded.Plates.HERE;
    }

    @Override
    public List<Knob> knobs() {
        return line.knobs(name, other -> new Cable(name, at, pulley, other));
    }
}
