package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * A lever without what hangs on its horns. A lever that weighs nothing worth counting has mass 0 and inertia 0.
 *
 * @param mass kg, zero or more
 * @param comRadius from the pivot to its centre of mass, m, zero or more
 * @param comOffset of the line pivot → centre of mass from the line pivot → pad, rad, counter-clockwise positive
 * @param inertia about the pivot, kg·m², at least mass × comRadius²
 */
public record LeverBody(double mass, double comRadius, double comOffset, double inertia) {
    // a person states rounded numbers: a point mass may miss its own inertia by the last digit
    private static final double ROUNDING = 0.01;

    public LeverBody {
        Require.within(mass, new Require.Limits(0, 500), "mass of the lever", "kg");
        Require.within(
                comRadius, new Require.Limits(0, 5), "distance of the lever's centre of mass from its pivot", "m");
        Require.finite(comOffset, "angle of the lever's centre of mass from its pad", "rad");
        double least = mass * comRadius * comRadius * (1 - ROUNDING);
        Require.within(inertia, new Require.Limits(least, 1000), "inertia of the lever about its pivot", "kg·m²");
    }

    /** A lever whose own weight and inertia are left out. */
    public static LeverBody weightless() {
        return new LeverBody(0, 0, 0, 0);
    }

    /** The same lever so many times as heavy; factor zero or more. */
    public LeverBody heavier(double factor) {
        return new LeverBody(factor * mass, comRadius, comOffset, factor * inertia);
    }
}
