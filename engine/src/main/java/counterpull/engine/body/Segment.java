package counterpull.engine.body;

import counterpull.engine.Require;

/**
 * One rigid part of the body in the plane of the exercise. Its direction runs from its proximal joint to its distal one;
 * across is to the left of that direction, which is counter-clockwise of it.
 *
 * @param length proximal to distal joint, m, above zero
 * @param mass kg, above zero
 * @param comAlong centre of mass, m from the proximal joint along the direction
 * @param comAcross centre of mass, m to the left of the line between the joints
 * @param inertia about its own centre of mass and the axis square to the plane, kg·m², ≥ 0
 */
public record Segment(double length, double mass, double comAlong, double comAcross, double inertia) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);

    public Segment {
        Require.positive(length, "length of a body segment", "m");
        Require.positive(mass, "mass of a body segment", "kg");
        Require.finite(comAlong, "centre of mass along a body segment", "m");
        Require.finite(comAcross, "centre of mass across a body segment", "m");
        Require.within(inertia, NOT_NEGATIVE, "moment of inertia of a body segment", "kg·m²");
    }

    /** The same segment of another length, m: its mass stays, where it lies along the segment goes with the length. */
    public Segment ofLength(double other) {
        double factor = other / length;
        return new Segment(other, mass, factor * comAlong, comAcross, factor * factor * inertia);
    }

    /** The same segment so many times as heavy; factor above zero. */
    public Segment heavier(double factor) {
        return new Segment(length, factor * mass, comAlong, comAcross, factor * inertia);
    }
}
