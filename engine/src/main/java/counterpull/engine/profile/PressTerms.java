package counterpull.engine.profile;

import counterpull.engine.Constants;
import counterpull.engine.load.Amount;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.Part;
import counterpull.engine.load.Share;
import counterpull.engine.load.SledFrame;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays out the terms of a rail press.
 *
 * <p>Plate rides: F = m(g sin θ + ẍ) + sgn(ẋ)(f₀ + μ m g cos θ) − (lines along <b>u</b>). Seat rides: F = −Σ mᵢ(g sin θ + aᵢ·u) + the
 * same friction with the person's weight in it + (lines along <b>u</b>), with every body segment at its own acceleration and
 * the hip at −p̈. A stack's line adds k·m(g + ẍ/R)/R + m_moving·ẍ either way. The loading phases carry their friction also where the
 * speed is zero; held carries none.
 */
final class PressTerms {
    private final PressTask task;
    private final PressMotion motion;
    private final Grid grid;
    private final double sin;
    private final double cos;
    private final List<Term> terms = new ArrayList<>();

    private PressTerms(PressTask task, PressMotion motion) {
        this.task = task;
        this.motion = motion;
        grid = Grid.leg(motion.positions());
        Rail rail = task.sled().rail();
        // weight presses the riding end toward the other one: downhill where the plate rides, uphill of it where the
        // seat does
        sin = Math.sin(rail.angle()) * (rail.ride() == Ride.PLATE ? 1 : -1);
        cos = Math.cos(rail.angle());
    }

    static Terms layOut(PressTask task, PressMotion motion) {
        return new PressTerms(task, motion).layOut();
    }

    /** A line over the range of a movement, refused past its tested length. */
    static LineSeries series(ElasticLine line, PressTask task, PressMotion motion) {
        double[] plate = new double[motion.positions()];
        for (int i = 0; i < plate.length; i++) {
            plate[i] = motion.plate(i);
        }
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        return LineSeries.of(line, plate, frame).withinTestedLength();
    }

    private Terms layOut() {
        LegDynamics[] legs = legs();
        limbTerms(legs);
        carriageTerms();
        if (task.sled().platesRide()) {
            plateTerms();
        }
        task.sled().stack().ifPresent(this::stackTerms);
        if (task.sled().rail().ride() == Ride.SEAT) {
            ridingBody(legs);
        }
        List<LineSeries> lines = new ArrayList<>();
        for (ElasticLine line : task.loading().lines()) {
            lines.add(series(line, task, motion));
        }
        return new Terms(terms, lines, legs, shares());
    }

    private LegDynamics[] legs() {
        Rail rail = task.sled().rail();
        double g = Constants.STANDARD_GRAVITY;
        Vec gravity = new Vec(-g * Math.sin(rail.angle()), -g * Math.cos(rail.angle()));
        LegDynamics.Frame frame =
                new LegDynamics.Frame(gravity, rail.ride(), task.stance().pressurePoint());
        LegDynamics[] legs = new LegDynamics[motion.legs()];
        for (int k = 0; k < legs.length; k++) {
            legs[k] = LegDynamics.of(task.person().limbs().get(k).leg(), motion, k, frame);
        }
        return legs;
    }

    private double[] shares() {
        double[] shares = new double[motion.legs()];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = task.person().limbs().get(k).share();
        }
        return shares;
    }

    private void limbTerms(LegDynamics[] legs) {
        double[][] weight = new double[legs.length][];
        double[][] inertia = new double[legs.length][];
        for (int k = 0; k < legs.length; k++) {
            weight[k] = legs[k].weight;
            inertia[k] = legs[k].inertia;
        }
        terms.add(Term.limbs(Part.LIMB_WEIGHT, "the limb's own weight", weight));
        terms.add(Term.limbs(Part.LIMB_INERTIA, "starting and stopping the limb", inertia));
    }

    private void carriageTerms() {
        Carriage carriage = task.sled().carriage();
        Counterweight counter = carriage.counterweight();
        double counterPull = counter.mass() * (counter.run() == Counterweight.Run.HANGING ? 1 : sin);
        one(Part.GRAVITY, "carriage", level(Constants.STANDARD_GRAVITY * (carriage.mass() * sin - counterPull)));
        one(Part.INERTIA, "carriage", accelerated(carriage.mass() + counter.mass()));
        one(Part.FRICTION, "constant friction", opposing(carriage.friction().constant()));
        one(Part.FRICTION, "friction under the carriage", opposing(rubbing() * carriage.mass()));
    }

    private void plateTerms() {
        Amount each = Amount.PLATES;
        terms.add(Term.contact(Part.GRAVITY, "plates", each, level(Constants.STANDARD_GRAVITY * sin)));
        terms.add(Term.contact(Part.INERTIA, "plates", each, accelerated(1)));
        terms.add(Term.contact(Part.FRICTION, "friction under the plates", each, opposing(rubbing())));
    }

    private void stackTerms(StackLine line) {
        for (Share share : line.pull("stack", opposing(1), accelerated(1))) {
            terms.add(Term.contact(share.part(), share.label(), share.amount(), share.perUnit()));
        }
    }

    private void ridingBody(LegDynamics[] legs) {
        double rest = task.person().restOfBody();
        double mass = task.person().mass();
        double[] inertia = accelerated(rest);
        for (LegDynamics leg : legs) {
            for (int cell = 0; cell < inertia.length; cell++) {
                inertia[cell] -= leg.inertiaAlong[cell];
            }
        }
        one(Part.GRAVITY, "the person's weight", level(Constants.STANDARD_GRAVITY * mass * sin));
        one(Part.INERTIA, "the person", inertia);
        one(Part.FRICTION, "friction under the person", opposing(rubbing() * mass));
    }

    private double rubbing() {
        return task.sled().carriage().friction().coefficient() * Constants.STANDARD_GRAVITY * cos;
    }

    private void one(Part part, String label, double[] force) {
        terms.add(Term.contact(part, label, Amount.ONE, force));
    }

    private double[] level(double force) {
        double[] cells = new double[grid.cells()];
        java.util.Arrays.fill(cells, force);
        return cells;
    }

    private double[] accelerated(double mass) {
        double[] cells = new double[grid.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < grid.positions(); i++) {
                cells[grid.cell(phase, i)] = mass * motion.acceleration(phase, i);
            }
        }
        return cells;
    }

    private double[] opposing(double force) {
        double[] cells = new double[grid.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < grid.positions(); i++) {
                cells[grid.cell(phase, i)] = phase.sense() * force;
            }
        }
        return cells;
    }
}
