package counterpull.engine.body;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.Optional;

/**
 * What the segments of a person, or of one side of a person, are made from. Lengths come from the tape where it was used,
 * else from stature ({@link DrillisContini1966}); masses and where they lie from the named table.
 *
 * @param table named by the input, no default
 * @param sex selects the table's row
 * @param stature m, 0.5 to 2.7 (our limits, against slips of the unit)
 * @param mass of the whole body, kg, 5 to 500 (our limits)
 * @param measured replaces lengths of this side
 */
public record Anthropometry(SegmentTable table, Sex sex, double stature, double mass, MeasuredLengths measured) {
    private static final Require.Limits STATURES = new Require.Limits(0.5, 2.7);
    private static final Require.Limits MASSES = new Require.Limits(5, 500);

    public Anthropometry {
        Require.within(stature, STATURES, "stature", "m");
        Require.within(mass, MASSES, "body mass", "kg");
    }

    /** A length of the body, m: measured, or from stature. The ankle is a quarter of this foot in front of its heel. */
    public double length(BodyLength which) {
        return measured.or(which, unmeasured(which));
    }

    private double unmeasured(BodyLength which) {
        return which == BodyLength.ANKLE_FROM_HEEL
                ? Foot.USUAL_ANKLE_FROM_HEEL * length(BodyLength.FOOT)
                : which.of(stature);
    }

    /** One leg. */
    public Leg leg() {
        Segment thigh = table.thigh(sex).segment(length(BodyLength.THIGH), mass);
        Segment shank = table.shank(sex).segment(length(BodyLength.SHANK), mass);
        return new Leg(thigh, shank, foot());
    }

    /** One arm. */
    public Arm arm() {
        return new Arm(upperArm(), forearmAndHand());
    }

    /** One side, with the trunk where the table has it. */
    public BodySide side() {
        return new BodySide(
                leg(),
                Optional.of(arm()),
                table.headArmsTrunk(sex).map(row -> row.segment(length(BodyLength.TRUNK), mass)));
    }

    /** One foot; its moment of inertia from the radius of gyration as a fraction of foot length. */
    public Foot foot() {
        double length = length(BodyLength.FOOT);
        SegmentRow row = table.foot(sex);
        return new Foot(
                length,
                length(BodyLength.ANKLE_HEIGHT),
                length(BodyLength.ANKLE_FROM_HEEL),
                row.mass(mass),
                row.inertia(length, mass));
    }

    /** One upper arm, from the shoulder. */
    public Segment upperArm() {
        return table.upperArm(sex).segment(length(BodyLength.UPPER_ARM), mass);
    }

    /** One forearm with its hand, from the elbow; its length ends at the wrist. */
    public Segment forearmAndHand() {
        return table.forearmAndHand(sex).segment(length(BodyLength.FOREARM), mass);
    }

    /** Head, both arms and trunk as one, from the hip; refused where the table has no such row. */
    public Segment headArmsTrunk() {
        SegmentRow row = table.headArmsTrunk(sex).orElseThrow(() -> {
            String sentence = table.name() + " has no row of head, arms and trunk together; name another table";
            return new Refusal(
                    Fault.OUTSIDE_PUBLISHED_RANGE, "head, arms and trunk", Double.NaN, Double.NaN, "", sentence);
        });
        return row.segment(length(BodyLength.TRUNK), mass);
    }
}
