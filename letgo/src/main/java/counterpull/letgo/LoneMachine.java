package counterpull.letgo;

/**
 * A machine with one way to move and nobody on it, seen along its own coordinate x: m along a rail, upward positive, or rad
 * of a lever, the way it is lifted positive. Forces along it are N or N·m, inertia kg or kg·m²; energies J from any fixed
 * zero.
 *
 * <p>It moves by
 *
 * <pre>M(x) ẍ + ½ M′(x) ẋ² = weight(x) + rubber(x, sgn ẋ) − sgn(ẋ) · (friction(x) + N(x) ẍ + ½ N′(x) ẋ²)</pre>
 *
 * which is the equation of Lagrange for kinetic energy ½ M ẋ², N what of the inertia rubs too: the pull of a stack's line rubs with all
 * of it, weight and inertia. A member keeps to this, and the tests of the family hold it to it:
 * weight = −d(weightEnergy)/dx; storing = −d(rubberEnergy)/dx; rubber that moves either way takes no less and gives no more than
 * it stores, so (storing − rubber) · ẋ is a loss and never a gain. Every method answers a little past the ends too, because an
 * integrator looks there.
 */
public interface LoneMachine {
    /** What has to be set moving at x, kg or kg·m², above zero. */
    double inertia(double x);

    /** How that grows with x, per m or per rad. */
    double inertiaSlope(double x);

    /** N: what of the inertia is pulled through something that rubs, times its lost share, kg or kg·m²; negative where that sinks while x grows. */
    default double rubbedInertia(double x) {
        return 0;
    }

    /** How that grows with x, per m or per rad. */
    default double rubbedInertiaSlope(double x) {
        return 0;
    }

    /** What weight pulls along x, N or N·m, upward positive. */
    double weight(double x);

    /** What rubber pulls along x while it moves this way, N or N·m: what it gives back where it shortens. */
    double rubber(double x, Sense sense);

    /** What rubber pulls along x where it is held or lengthens, N or N·m; the slope of what it stores, sign reversed. */
    double storing(double x);

    /** Friction while it moves without speeding up, N or N·m, zero or more. */
    double friction(double x);

    /** The most that friction holds at rest, N or N·m; at least {@link #friction}. */
    double holding(double x);

    /** Energy of the weights, J. */
    double weightEnergy(double x);

    /** Energy put into the rubber since it was loose, J; not all of it comes back. */
    double rubberEnergy(double x);

    /** How far the tightest rubber is from its tested length, m; infinite without rubber. */
    double testedRoom(double x);

    /** How far it is followed. */
    Ends ends();

    /** Everything but friction that drives it along x while it moves this way, N or N·m. */
    default double drive(double x, Sense sense) {
        return weight(x) + rubber(x, sense);
    }
}
