package counterpull.engine.planar;

import counterpull.engine.Require;

/**
 * An open planar chain of rigid segments, proximal first: segment i turns about joint i and carries joint i + 1 at its far
 * end. Lengths in m, masses in kg, centre of mass in the segment's own axes (along it from its proximal joint; across it,
 * positive to the left of its direction) in m, inertia about the centre of mass in kg·m².
 *
 * <p>Refuses a length or mass that is not above zero, a negative inertia, anything not finite.
 */
public final class Chain {
    final double[] length;
    final double[] mass;
    final double[] comAlong;
    final double[] comAcross;
    final double[] inertia;

    private Chain(Builder builder) {
        int n = builder.count;
        length = copy(builder.length, n);
        mass = copy(builder.mass, n);
        comAlong = copy(builder.comAlong, n);
        comAcross = copy(builder.comAcross, n);
        inertia = copy(builder.inertia, n);
    }

    private static double[] copy(double[] from, int n) {
        double[] to = new double[n];
        System.arraycopy(from, 0, to, 0, n);
        return to;
    }

    /** How many segments (and joints) there are. */
    public int size() {
        return mass.length;
    }

    /** Length of segment i, m. */
    public double length(int i) {
        return length[i];
    }

    /** Mass of segment i, kg. */
    public double mass(int i) {
        return mass[i];
    }

    /** Centre of mass of segment i along it from its proximal joint, m. */
    public double comAlong(int i) {
        return comAlong[i];
    }

    /** Centre of mass of segment i across it, m, positive to the left of its direction. */
    public double comAcross(int i) {
        return comAcross[i];
    }

    /** Inertia of segment i about its centre of mass, kg·m². */
    public double inertia(int i) {
        return inertia[i];
    }

    /** A builder that takes segments proximal first, up to 16. */
    public static Builder build() {
        return new Builder();
    }

    /** Collects the segments of a chain. */
    public static final class Builder {
        private static final int MOST = 16;
        private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.MAX_VALUE);
        private final double[] length = new double[MOST];
        private final double[] mass = new double[MOST];
        private final double[] comAlong = new double[MOST];
        private final double[] comAcross = new double[MOST];
        private final double[] inertia = new double[MOST];
        private int count;

        private Builder() {}

        /**
         * The next segment toward the far end.
         *
         * @param segmentLength m, above zero
         * @param segmentMass kg, above zero
         * @param com centre of mass, along and across the segment, m
         * @param aboutCom inertia about the centre of mass, kg·m², zero or more
         */
        public Builder segment(double segmentLength, double segmentMass, Vec com, double aboutCom) {
            Require.within(count + 1, new Require.Limits(1, MOST), "segments of a chain", "");
            length[count] = Require.positive(segmentLength, "segment length", "m");
            mass[count] = Require.positive(segmentMass, "segment mass", "kg");
            comAlong[count] = Require.finite(com.x(), "centre of mass along the segment", "m");
            comAcross[count] = Require.finite(com.y(), "centre of mass across the segment", "m");
            inertia[count] = Require.within(aboutCom, NOT_NEGATIVE, "segment inertia", "kg·m²");
            count++;
            return this;
        }

        /** The chain; at least one segment. */
        public Chain done() {
            Require.positive(count, "segments of a chain", "");
            return new Chain(this);
        }
    }
}
