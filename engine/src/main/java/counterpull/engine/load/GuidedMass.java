package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.Require;
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
 * A bar, plate or seat that runs on a straight rail and touches the body at a point.
 *
 * <p>Formula: force = m(g sin θ + c̈) − g c + M_c c̈ ± (f₀ + μN), N, on the body against <b>u</b>; <b>u</b> the rail's direction in the sense in
 * which the point goes toward the top, θ its angle from the horizontal, c = point · <b>u</b>, m; m carriage + plates, M_c the
 * counterweight, c = M_c sin θ where it runs along the rail, c = M_c where it hangs free and <b>u</b> does not fall, −M_c where <b>u</b>
 * falls: it draws up the rail either way; its inertia counts once. Friction +
 * lifting, − lowering, also where the speed is zero, none held; N = m √(g₀² − g² sin² θ), the weight's part across the rail (m g cos θ in an
 * upright plane, m g₀ in a level one). Sign: positive where the body pushes it toward the top; below zero contact is lost. Range: a point that goes
 * one way along the rail. Source: the law of the carriage, Newton's second law along the rail; friction after Coulomb.
 *
 * <p>Ours: the rail carries all that is square to it, so the body pushes along the rail alone, whatever way the point itself goes; it slides across
 * without friction. Friction's normal force is the weight's alone, without counterweight and push (a stated simplification).
 *
 * @param name as a person says it ("bar on rails")
 * @param at where it touches the body
 * @param railAngle direction of the rail from x, rad; which of its two senses does not matter
 * @param carriage what rides before the plates, counterweight and friction; its rating for plates is for whoever chooses them
 * @param plates whether the chosen plates go on it
 */
public record GuidedMass(String name, BodyPoint at, double railAngle, Carriage carriage, Loaded.Plates plates)
        implements Resistance {
    private static final double LEVEL = 1e-9;
    private static final Require.Limits TURN = new Require.Limits(-2 * Math.PI, 2 * Math.PI);

    public GuidedMass {
        Require.within(railAngle, TURN, "direction of the rail of " + name, "rad");
    }

    @Override
    public String words() {
        return name;
    }

    private Loaded riding() {
        return new Loaded(carriage.mass(), plates);
    }

    /** How it touches the body: the same for whatever else hangs on it. */
    public RailFrame frame() {
        return new RailFrame(at, railAngle);
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        Course course = path.course();
        PointTrack track = path.track(at);
        Vec toward = frame().over(path).toward();
        double[] speedingUp = new double[course.cells()];
        double[] rubbing = new double[course.cells()];
        double[][] against = new double[path.positions()][];
        for (int i = 0; i < path.positions(); i++) {
            against[i] = new double[] {-toward.x(), -toward.y()};
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                speedingUp[cell] = toward.dot(track.acceleration(course, phase, i));
                rubbing[cell] = phase.sense();
            }
        }
        List<Share> shares = weights(course, gravity * toward.y());
        shares.addAll(inertias(speedingUp));
        shares.addAll(frictions(rubbing, pressing(gravity, toward)));
        return List.of(Pull.force(name, at, against, Pull.Holds.ONE_WAY, shares).through(frame()));
    }

    private List<Share> weights(Course course, double alongRail) {
        double[] perKilogram = new double[course.cells()];
        java.util.Arrays.fill(perKilogram, alongRail);
        List<Share> shares = new ArrayList<>(riding().shares(Part.GRAVITY, name, perKilogram));
        Counterweight counter = carriage.counterweight();
        if (counter.mass() > 0) {
            double[] off = new double[course.cells()];
            java.util.Arrays.fill(off, -counterPull(alongRail));
            shares.add(new Share(Part.GRAVITY, "counterweight", Amount.ONE, off));
        }
        return shares;
    }

    private double counterPull(double alongRail) {
        Counterweight counter = carriage.counterweight();
        boolean hanging = counter.run() == Counterweight.Run.HANGING;
        // it draws up the rail; on a level one toward the top
        double free = alongRail < -LEVEL ? -Constants.STANDARD_GRAVITY : Constants.STANDARD_GRAVITY;
        return counter.mass() * (hanging ? free : alongRail);
    }

    private List<Share> inertias(double[] acceleration) {
        List<Share> shares = new ArrayList<>(riding().shares(Part.INERTIA, name, acceleration));
        double counter = carriage.counterweight().mass();
        if (counter > 0) {
            shares.add(new Share(Part.INERTIA, "counterweight", Amount.ONE, times(acceleration, counter)));
        }
        return shares;
    }

    private List<Share> frictions(double[] sense, double pressing) {
        Friction friction = carriage.friction();
        List<Share> shares = new ArrayList<>();
        if (friction.constant() > 0) {
            shares.add(new Share(Part.FRICTION, "constant friction", Amount.ONE, times(sense, friction.constant())));
        }
        if (friction.coefficient() > 0) {
            double[] perKilogram = times(sense, friction.coefficient() * pressing);
            shares.addAll(riding().shares(Part.FRICTION, "friction under " + name, perKilogram));
        }
        return shares;
    }

    private static double[] times(double[] values, double factor) {
        double[] product = values.clone();
        for (int at = 0; at < product.length; at++) {
            product[at] *= factor;
        }
        return product;
    }

    /** What one kilogram presses on the rail, N. */
    private static double pressing(double gravity, Vec toward) {
        double along = gravity * toward.y();
        double all = Constants.STANDARD_GRAVITY;
        return Math.sqrt(Math.max(0, all * all - along * along));
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        Course course = path.course();
        PointTrack track = path.track(at);
        Vec toward = frame().over(path).toward();
        double m = riding().mass(plates);
        double weight = m * gravity * toward.y() - counterPull(gravity * toward.y());
        double friction =
                carriage.friction().constant() + carriage.friction().coefficient() * m * pressing(gravity, toward);
        Ledger ledger = Ledger.empty(course);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                double speed = toward.dot(track.velocity(course, phase, i));
                ledger.stored()[cell] = weight * toward.dot(track.at(i));
                ledger.kinetic()[cell] = (m + carriage.counterweight().mass()) * speed * speed / 2;
                ledger.lost()[cell] = friction * Math.abs(speed);
            }
        }
        return ledger;
    }

    /** Where it runs upright it weighs on the body like a mass that rides on it; on a slanted rail with the upright part of its push. */
    @Override
    public List<Motion.Carried> carried(double plates) {
        double sin = Math.sin(railAngle);
        Counterweight counter = carriage.counterweight();
        double hanging = counter.run() == Counterweight.Run.HANGING ? Math.abs(sin) : sin * sin;
        double mass = riding().mass(plates) * sin * sin - counter.mass() * hanging;
        return List.of(new Motion.Carried(at, Math.max(0, mass)));
    }

    @Override
    public boolean takesPlates() {
        return plates == Loaded.Plates.HERE;
    }

    @Override
    public List<Knob> knobs() {
        return List.of(
                Knob.mass(name, factor -> with(carriage.ofMass(factor * carriage.mass()))),
                new Knob(
                        "constant friction of the " + name,
                        Knob.Kind.CONSTANT_FRICTION,
                        added -> with(carriage.with(carriage.friction().changed(added, 0)))),
                new Knob(
                        "friction coefficient of the " + name,
                        Knob.Kind.FRICTION_COEFFICIENT,
                        added -> with(carriage.with(carriage.friction().changed(0, added)))));
    }

    private GuidedMass with(Carriage other) {
        return new GuidedMass(name, at, railAngle, other, plates);
    }
}
