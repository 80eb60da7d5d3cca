package counterpull.letgo;

import counterpull.engine.Refusal;
import counterpull.engine.load.Resistance;
import java.util.List;

/**
 * A part of an exercise's machine with nobody on it: a lever with all that weighs, winds and pulls on it, or a carriage on its rail. Its coordinate
 * u is the part's own, above the bottom of the range, the way it is lifted positive: rad of the lever, m along the rail.
 *
 * <p>Everything comes from the engine's own laws, asked with a bare rod in the limb's stead; rubber counts with its guides. A
 * little past an end of the range it goes on as it is, for the integrator's sake; where the engine has no answer there, as at that end.
 */
final class FreePart implements LoneMachine {
    private static final double BEYOND = 0.3;
    private final Rod rod;
    private final List<Resistance> carried;
    private final Surroundings around;
    private final Ends ends;
    private final double least;
    private final double most;
    private double place = Double.NaN;
    private Moment moment;

    /**
     * Where a machine stands.
     *
     * @param gravity of the exercise's plane, m/s²
     * @param plates chosen plates, kg
     */
    record Surroundings(double gravity, double plates) {}

    /**
     * @param rod what goes with the part
     * @param carried what is on it, {@linkplain Rod#carry as carried by the rod}
     * @param around where it stands
     * @param bottom what is at the bottom of the range
     */
    FreePart(Rod rod, List<Resistance> carried, Surroundings around, Ends.Bottom bottom) {
        this.rod = rod;
        this.carried = List.copyOf(carried);
        this.around = around;
        ends = new Ends(0, bottom, rod.travel());
        least = answers(-BEYOND) ? -BEYOND : 0;
        most = answers(rod.travel() + BEYOND) ? rod.travel() + BEYOND : rod.travel();
    }

    private boolean answers(double u) {
        try {
            return moment(u).inertia() > 0;
        } catch (Refusal refusal) {
            return false;
        }
    }

    private Moment moment(double u) {
        Moment found = new Moment(rod.at(u, Moment.course()), around.plates());
        for (Resistance resistance : carried) {
            found.add(resistance, around.gravity());
        }
        return found;
    }

    /** The engine's answer at a place, kept while the place is the same. */
    private Moment at(double x) {
        double u = Math.min(most, Math.max(least, x));
        if (u != place) {
            moment = moment(u);
            place = u;
        }
        return moment;
    }

    @Override
    public double inertia(double x) {
        return at(x).inertia();
    }

    @Override
    public double inertiaSlope(double x) {
        return at(x).inertiaSlope();
    }

    @Override
    public double rubbedInertia(double x) {
        return at(x).rubbedInertia();
    }

    @Override
    public double rubbedInertiaSlope(double x) {
        return at(x).rubbedSlope();
    }

    @Override
    public double weight(double x) {
        return at(x).weight;
    }

    @Override
    public double rubber(double x, Sense sense) {
        return sense == Sense.UP ? at(x).up : at(x).down;
    }

    @Override
    public double storing(double x) {
        return at(x).storing;
    }

    @Override
    public double friction(double x) {
        return at(x).friction();
    }

    @Override
    public double holding(double x) {
        return Math.max(at(x).friction(), at(x).breakaway);
    }

    @Override
    public double weightEnergy(double x) {
        return at(x).weightEnergy;
    }

    @Override
    public double rubberEnergy(double x) {
        return at(x).rubberEnergy;
    }

    @Override
    public double testedRoom(double x) {
        return at(x).testedRoom;
    }

    @Override
    public Ends ends() {
        return ends;
    }
}
