package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Amount;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * The one structure in the middle: everything that a profile's forces and torques are made of, laid out once for a person,
 * a stance, a range and a tempo, as amounts × coefficients. Their sum is the answer, their parts are the why, their
 * coefficients are what the search goes over.
 *
 * <p>Contact force along <b>u</b>: F = Σ amount × coefficient (N). Torque of a limb's joint: Σ own terms + share × F × (arm along
 * + tan α × arm across) (N·m, in the sense of the joint's named action).
 */
public final class Terms {
    private static final int JOINTS = Joint.LEG.size();
    private final Grid grid;
    private final List<Term> fixed;
    private final List<Term> lineTerms;
    private final List<LineSeries> lines;
    private final LegDynamics[] legs;
    private final double[] shares;

    Terms(List<Term> fixed, List<LineSeries> lines, LegDynamics[] legs, double[] shares) {
        grid = Grid.leg(legs[0].armAlong.length / JOINTS);
        this.fixed = List.copyOf(fixed);
        this.lines = List.copyOf(lines);
        this.legs = legs;
        this.shares = shares;
        List<Term> found = new ArrayList<>();
        for (LineSeries line : lines) {
            found.add(Term.contact(Part.ELASTIC, line.line().words(), Amount.STRANDS, pull(line, grid)));
        }
        lineTerms = List.copyOf(found);
    }

    /** The same terms with these lines on, each with its series over this range. */
    public Terms with(List<LineSeries> other) {
        return new Terms(fixed, other, legs, shares);
    }

    /**
     * Contact force that one strand of a line adds, N, by phase × position: the push falls by what the line pulls toward
     * the top, whichever end rides.
     */
    static double[] pull(LineSeries line, Grid grid) {
        double[] force = new double[grid.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < grid.positions(); i++) {
                force[grid.cell(phase, i)] = line.push(phase, i);
            }
        }
        return force;
    }

    /** All terms: those of person and machine, then one for each line. */
    public List<Term> all() {
        List<Term> all = new ArrayList<>(fixed);
        all.addAll(lineTerms);
        return all;
    }

    /** The lines over this range. */
    public List<LineSeries> lines() {
        return lines;
    }

    /** How much of each term a loading has, in the order of {@link #all()}. */
    public double[] amounts(Loading loading) {
        double[] amounts = new double[fixed.size() + lineTerms.size()];
        for (int t = 0; t < fixed.size(); t++) {
            amounts[t] = fixed.get(t).amount() == Amount.PLATES ? loading.plates() : 1;
        }
        for (int k = 0; k < lineTerms.size(); k++) {
            ElasticLine line = lines.get(k).line();
            amounts[fixed.size() + k] = line.strands();
        }
        return amounts;
    }

    /** Contact force along <b>u</b> of a loading whose lines are these terms' lines, N, by phase × position. */
    public double[] contact(Loading loading) {
        return contact(amounts(loading));
    }

    /** Contact force along <b>u</b> for these amounts, N, by phase × position. */
    double[] contact(double[] amounts) {
        double[] force = new double[grid.cells()];
        List<Term> all = all();
        for (int t = 0; t < amounts.length; t++) {
            Term term = all.get(t);
            if (term.throughContact()) {
                for (int cell = 0; cell < force.length; cell++) {
                    force[cell] += amounts[t] * term.contact(cell);
                }
            }
        }
        return force;
    }

    /** The limb's own torque (weight and inertia), N·m, by phase × position × joint. */
    double[] own(int limb) {
        double[] own = legs[limb].weight.clone();
        for (int cell = 0; cell < own.length; cell++) {
            own[cell] += legs[limb].inertia[cell];
        }
        return own;
    }

    /** {@link #armAlong} by position × joint. */
    double[] armsAlong(int limb) {
        return shared(legs[limb].armAlong, shares[limb]);
    }

    /** {@link #armAcross} by position × joint. */
    double[] armsAcross(int limb) {
        return shared(legs[limb].armAcross, shares[limb]);
    }

    private static double[] shared(double[] arms, double share) {
        double[] all = arms.clone();
        for (int at = 0; at < all.length; at++) {
            all[at] *= share;
        }
        return all;
    }

    /** Torque per newton of the whole contact force along <b>u</b>, the limb's share included, m. */
    double armAlong(int limb, Joint joint, int position) {
        return shares[limb] * legs[limb].armAlong[position * JOINTS + joint.ordinal()];
    }

    /** Torque per newton of the whole contact force along <b>n</b>, the limb's share included, m. */
    double armAcross(int limb, Joint joint, int position) {
        return shares[limb] * legs[limb].armAcross[position * JOINTS + joint.ordinal()];
    }

    /** Centre of pressure from a joint of a limb, in the rail's axes, m. */
    Vec pressureFrom(int limb, Joint joint, int position) {
        return legs[limb].pressureFrom(joint, position);
    }

    Grid grid() {
        return grid;
    }

    int limbs() {
        return legs.length;
    }
}
