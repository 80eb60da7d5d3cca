package counterpull.engine.body;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * One row of a table of body segments: fractions that turn a length and a body mass into a segment. The endpoints belong
 * to the row, since the same segment between other endpoints has other fractions.
 *
 * @param segment as the table names it
 * @param endpoints proximal - distal
 * @param massFraction mass over body mass, 0 to 1
 * @param comFraction centre of mass from the proximal endpoint over length, 0 to 1
 * @param gyrationFraction radius of gyration about the centre of mass over length, for turning in the sagittal plane
 *     (about the transverse axis); NaN where none is published
 */
public record SegmentRow(
        String segment, String endpoints, double massFraction, double comFraction, double gyrationFraction) {
    private static final Require.Limits FRACTION = new Require.Limits(0, 1);

    public SegmentRow {
        Require.within(massFraction, FRACTION, "mass fraction of " + segment, "");
        Require.within(comFraction, new Require.Limits(0, 2), "centre of mass fraction of " + segment, "");
        if (!Double.isNaN(gyrationFraction)) {
            Require.within(gyrationFraction, FRACTION, "radius of gyration fraction of " + segment, "");
        }
    }

    /**
     * The segment of a person, its centre of mass on the line between its endpoints.
     *
     * @param length between these endpoints, m, above zero
     * @param bodyMass kg, above zero
     */
    public Segment segment(double length, double bodyMass) {
        return new Segment(length, mass(bodyMass), comFraction * length, 0, inertia(length, bodyMass));
    }

    /** Mass of the segment, kg, from the body's. */
    public double mass(double bodyMass) {
        return massFraction * Require.positive(bodyMass, "body mass", "kg");
    }

    /** Moment of inertia about its centre of mass, kg·m². */
    public double inertia(double length, double bodyMass) {
        if (Double.isNaN(gyrationFraction)) {
            String sentence = "the table has no radius of gyration for " + segment;
            throw new Refusal(Fault.OUTSIDE_PUBLISHED_RANGE, segment, Double.NaN, Double.NaN, "", sentence);
        }
        double radius = gyrationFraction * length;
        return mass(bodyMass) * radius * radius;
    }

    /** Radius of gyration about the proximal endpoint over length, by the parallel-axis theorem. */
    public double gyrationAboutProximal() {
        return Math.hypot(gyrationFraction, comFraction);
    }

    /** Radius of gyration about the distal endpoint over length, by the parallel-axis theorem. */
    public double gyrationAboutDistal() {
        return Math.hypot(gyrationFraction, 1 - comFraction);
    }

    /**
     * This row and the one that continues it in a straight line, as one segment in fractions of this row's length.
     *
     * @param distal the row that starts where this one ends
     * @param lengthRatio its length over this row's, above zero
     */
    SegmentRow joinedTo(SegmentRow distal, double lengthRatio) {
        double mass = massFraction + distal.massFraction;
        double distalCom = 1 + distal.comFraction * lengthRatio;
        double com = (massFraction * comFraction + distal.massFraction * distalCom) / mass;
        double own = massFraction * square(gyrationFraction)
                + distal.massFraction * square(distal.gyrationFraction * lengthRatio);
        double apart = massFraction * square(comFraction - com) + distal.massFraction * square(distalCom - com);
        double gyration = Math.sqrt((own + apart) / mass);
        return new SegmentRow(segment + " and " + distal.segment, endpoints, mass, com, gyration);
    }

    private static double square(double x) {
        return x * x;
    }
}
