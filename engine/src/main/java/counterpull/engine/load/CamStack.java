package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * A lever that winds the line of a weight stack on a cam.
 *
 * <p>Formula: torque on the lever against the stack's rise r·(k·m(g + ÿ/R)/R + m_moving·ÿ) + I φ̈, with y the line drawn in, m,
 * r = dy/dφ the cam's radius, ÿ = r φ̈ + r′ φ̇², k = 1 ± friction by the stack's own rise ({@link StackLine}), I the inertia of all that
 * turns; contact force as in {@link LeverPath}. Held: no friction, no inertia. The lever's own weight is not counted here: state a
 * {@link Lever} on the same frame beside it where it is not balanced.
 *
 * <p>Sign: a positive radius raises the stack while the limb lifts; a negative one lets it sink and helps. Range: where the radius was
 * measured ({@link CamRadius}), a stack that keeps its line tight. Source: virtual work; own derivation; docs/notation.md.
 *
 * @param name as a person says it
 * @param frame pivot and contact
 * @param radius the cam's radius against the lever's angle
 * @param line the stack and its pulleys; its stack hangs upright and weighs g whatever the plane of the exercise
 * @param inertia of lever and cam about the pivot, kg·m², zero or more
 */
public record CamStack(String name, LeverFrame frame, CamRadius radius, StackLine line, double inertia)
        implements Resistance {
    public CamStack {
        Require.within(inertia, new Require.Limits(0, 1000), "inertia of lever and cam of the " + name, "kg·m²");
    }

    @Override
    public String words() {
        return name;
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        LeverPath lever = frame.over(path);
        CamRun run = new CamRun(lever, radius);
        List<Share> load = new ArrayList<>();
        for (Share pull : line.pull(name, run.rise(), run.acceleration())) {
            load.add(Shares.times(pull, run.torquePerPull(), lever.course()));
        }
        if (inertia > 0) {
            load.add(new Share(Part.INERTIA, name + ", lever", Amount.ONE, lever.timesAcceleration(-inertia)));
        }
        return lever.pulls(name, load);
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        LeverPath lever = frame.over(path);
        CamRun run = new CamRun(lever, radius);
        Course course = path.course();
        double weight = line.stack().mass(plates) * Constants.STANDARD_GRAVITY / line.ratio();
        Ledger ledger = Ledger.empty(course);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < course.positions(); i++) {
                int cell = course.cell(phase, i);
                double speed = run.speed(phase, i);
                double turning = lever.speed(phase, i);
                double pull = line.stack().mass(plates) * line.perKilogram(run.acceleration()[cell]);
                ledger.stored()[cell] = weight * run.drawn(i);
                ledger.kinetic()[cell] = (line.feltMass(plates) * speed * speed + inertia * turning * turning) / 2;
                ledger.lost()[cell] = line.friction() * pull * Math.abs(speed);
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
        return line.knobs(name, other -> new CamStack(name, frame, radius, other, inertia));
    }
}
