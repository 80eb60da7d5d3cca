package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * One piece of rubber on hand: its law, what it loses, and how far it was tested. Nothing is ever said about it past its
 * tested length.
 *
 * @param tag what is written on the piece; not blank
 * @param naturalLength of the piece between its ends' hardware, unstretched, m, above zero
 * @param law of one strand of it
 * @param unloading what one strand gives back while shortening; checked against the law, and closed, on the way in
 * @param testedMaxLength longest length of this piece that was tested, m, above its natural length and within the law
 * @param mass of the rubber, kg, ≥ 0; 0 where unknown
 * @param hardwareLength rubber taken up where the piece is doubled over a hook, m, ≥ 0 and less than the natural length
 */
public record Rubber(
        String tag,
        double naturalLength,
        ElasticLaw law,
        Unloading unloading,
        double testedMaxLength,
        double mass,
        double hardwareLength) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);
    private static final double ROUNDING = 1e-12;

    public Rubber {
        if (tag.isBlank()) {
            throw new Refusal(Fault.EMPTY_RANGE, "tag", 0, 1, "", "a piece of rubber must have a tag");
        }
        Require.positive(naturalLength, "natural length of " + tag, "m");
        requireLonger(Require.finite(testedMaxLength, "tested length of " + tag, "m"), naturalLength, tag);
        Require.within(mass, NOT_NEGATIVE, "mass of " + tag, "kg");
        Require.within(hardwareLength, NOT_NEGATIVE, "length taken up by hardware of " + tag, "m");
        requireRoom(hardwareLength, naturalLength, tag);
        requireKnown(law, testedMaxLength, naturalLength, tag);
        unloading = unloading.fittedTo(law, testedMaxLength / naturalLength);
    }

    private static void requireLonger(double tested, double natural, String tag) {
        if (tested <= natural) {
            String sentence = "tested length of " + tag + " must be more than its natural length of " + natural + " m";
            throw new Refusal(Fault.OUTSIDE_LIMITS, "tested length of " + tag, tested, natural, "m", sentence);
        }
    }

    private static void requireRoom(double hardware, double natural, String tag) {
        if (hardware >= natural) {
            String name = "length taken up by hardware of " + tag;
            String sentence = name + " must be less than its natural length of " + natural + " m";
            throw new Refusal(Fault.OUTSIDE_LIMITS, name, hardware, natural, "m", sentence);
        }
    }

    private static void requireKnown(ElasticLaw law, double tested, double natural, String tag) {
        double known = law.largestStretch() * natural;
        if (tested > known * (1 + ROUNDING)) {
            String sentence = "tested length of " + tag + " must be at most " + known
                    + " m, the longest that its law was measured for";
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "tested length of " + tag + ", which is not past its longest reading,",
                    tested,
                    known,
                    "m",
                    sentence);
        }
    }

    /** Largest stretch that was tested, a pure number above 1. */
    public double maxStretch() {
        return testedMaxLength / naturalLength;
    }

    /** The piece hung as it is: one strand of its natural length. */
    public Strand single() {
        return new Strand(this, naturalLength);
    }

    /** One of the two equal strands of the piece doubled over a hook; both together pull twice its force. */
    public Strand doubled() {
        return new Strand(this, (naturalLength - hardwareLength) / 2);
    }

    /** The same piece pulling so many times as hard at every length; factor above zero. */
    public Rubber times(double factor) {
        return new Rubber(
                tag, naturalLength, law.times(factor), unloading.times(factor), testedMaxLength, mass, hardwareLength);
    }

    /** The same piece with another natural length, m, and the same pull at the same stretch; tested to the same stretch. */
    public Rubber ofNaturalLength(double length) {
        return new Rubber(tag, length, law, unloading, maxStretch() * length, mass, hardwareLength);
    }
}
