package counterpull.engine.body;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * A foot with a flat sole. Its direction runs from heel to toe; the sole lies to the right of that, at ankle height. The
 * centre of mass is half a foot length in front of the heel and half the ankle height up, whatever the table: common
 * practice, no source (de Leva 1996 has it at 0.44 of the length for men and 0.40 for women).
 *
 * @param length heel to tip of the toes, m, above zero
 * @param ankleHeight from the sole up to the ankle, m, above zero
 * @param ankleFromHeel from the heel forward to the ankle, m, ≥ 0 and less than the length
 * @param mass kg, above zero
 * @param inertia about its own centre of mass, kg·m², ≥ 0
 */
public record Foot(double length, double ankleHeight, double ankleFromHeel, double mass, double inertia) {
    /** Where the ankle is usually put: this fraction of foot length in front of the heel; common practice, no source. */
    public static final double USUAL_ANKLE_FROM_HEEL = 0.25;

    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);
    private static final Require.Limits WHOLE_FOOT = new Require.Limits(0, 1);

    public Foot {
        Require.positive(length, "foot length", "m");
        Require.positive(ankleHeight, "ankle height", "m");
        Require.within(ankleFromHeel, NOT_NEGATIVE, "ankle from the heel", "m");
        if (ankleFromHeel >= length) {
            String sentence = "ankle from the heel must be less than the foot length of " + length + " m";
            throw new Refusal(Fault.OUTSIDE_LIMITS, "ankle from the heel", ankleFromHeel, length, "m", sentence);
        }
        Require.positive(mass, "mass of a foot", "kg");
        Require.within(inertia, NOT_NEGATIVE, "moment of inertia of a foot", "kg·m²");
    }

    /** The foot as a segment that starts at the ankle and points from heel to toe; its length ends at the toe. */
    public Segment asSegment() {
        return new Segment(length - ankleFromHeel, mass, 0.5 * length - ankleFromHeel, -ankleHeight / 2, inertia);
    }

    /**
     * Where a pressure point lies along the foot, m from the ankle toward the toe.
     *
     * @param fraction of foot length from the heel, 0 to 1
     */
    public double pressureAlong(double fraction) {
        Require.within(fraction, WHOLE_FOOT, "pressure point as a fraction of foot length", "");
        return fraction * length - ankleFromHeel;
    }

    /** Where every pressure point lies across the foot, m to the left of the ankle: on the sole, so below zero. */
    public double pressureAcross() {
        return -ankleHeight;
    }

    /** The same foot of another length, m: the ankle keeps its share of the length. */
    public Foot ofLength(double other) {
        double factor = other / length;
        return new Foot(other, ankleHeight, factor * ankleFromHeel, mass, factor * factor * inertia);
    }

    /** The same foot with another ankle height, m. */
    public Foot ofAnkleHeight(double other) {
        return new Foot(length, other, ankleFromHeel, mass, inertia);
    }

    /** The same foot so many times as heavy; factor above zero. */
    public Foot heavier(double factor) {
        return new Foot(length, ankleHeight, ankleFromHeel, factor * mass, factor * inertia);
    }

    /** The same foot with the ankle so far in front of the heel, m. */
    public Foot ofAnkleFromHeel(double other) {
        return new Foot(length, ankleHeight, other, mass, inertia);
    }
}
