package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * One strand of a rubber as it is hung: a length of rubber between two points, which pulls and never pushes.
 *
 * <p>Lengths are of the rubber alone (path less what does not stretch), m, any finite number: at or below natural length
 * the strand is slack and every answer is 0. Past {@link #maxLength()} every single-point answer is a refusal
 * ({@link Fault#PAST_TESTED_LENGTH}) with the length and the limit; the series answer is NaN there, and the caller
 * reports it.
 *
 * @param rubber what it is made of
 * @param naturalLength of this strand, m, above zero
 */
public record Strand(Rubber rubber, double naturalLength) {
    public Strand {
        Require.positive(naturalLength, "natural length of a strand of " + rubber.tag(), "m");
    }

    /** Longest length for which the rubber was tested, m. */
    public double maxLength() {
        return naturalLength * rubber.maxStretch();
    }

    /** Pull while lengthening or held, N. */
    public double force(double length) {
        return rubber.law().tension(testedStretch(length));
    }

    /** Pull while shortening, N. */
    public double unloadingForce(double length) {
        return rubber.unloading().tension(rubber.law(), testedStretch(length));
    }

    /** Rise of the lengthening force with length, N/m. */
    public double stiffness(double length) {
        return rubber.law().slope(testedStretch(length)) / naturalLength;
    }

    /** Energy stored since natural length, J. */
    public double energy(double length) {
        return naturalLength * rubber.law().energy(testedStretch(length));
    }

    /** Energy given back on the way from this length to natural length, J. */
    public double energyReturned(double length) {
        return naturalLength * rubber.unloading().energyReturned(rubber.law(), testedStretch(length));
    }

    /**
     * Forces of a whole series of lengths, without allocating: N in both phases, NaN where a length is past
     * {@link #maxLength()} or not a number.
     *
     * @param lengths m
     * @param lengthening takes the force while lengthening or held, N; as long as lengths
     * @param shortening takes the force while shortening, N; as long as lengths
     */
    public void forces(double[] lengths, double[] lengthening, double[] shortening) {
        requireRoom(lengthening, lengths.length);
        requireRoom(shortening, lengths.length);
        double limit = maxLength();
        for (int i = 0; i < lengths.length; i++) {
            double stretch = lengths[i] > limit ? Double.NaN : lengths[i] / naturalLength;
            lengthening[i] = rubber.law().tension(stretch);
            shortening[i] = rubber.unloading().tension(rubber.law(), stretch);
        }
    }

    private static void requireRoom(double[] out, int count) {
        if (out.length != count) {
            String sentence = "forces must have as many places as there are lengths, " + count;
            throw new Refusal(Fault.OUTSIDE_LIMITS, "places for forces", out.length, count, "", sentence);
        }
    }

    private double testedStretch(double length) {
        Require.finite(length, "length of " + rubber.tag(), "m");
        if (length > maxLength()) {
            String sentence = rubber.tag() + " would be " + Figures.of(length) + " m long; this strand is tested to "
                    + Figures.of(maxLength()) + " m";
            throw new Refusal(
                    Fault.PAST_TESTED_LENGTH, "length of " + rubber.tag(), length, maxLength(), "m", sentence);
        }
        return length / naturalLength;
    }
}
