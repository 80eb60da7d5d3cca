package counterpull.engine.body;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * Dempster's segments as Winter prints them: the same for both sexes, from eight bodies of older men (from memory).
 *
 * <p>Source: Winter DA, Biomechanics and Motor Control of Human Movement, Table 4.1, after Dempster WT 1955
 * (WADC-TR-55-159) via Miller &amp; Nelson 1973 and Plagenhoef 1971.
 *
 * <p>Ours differs in the foot: the printed fractions run from the ankle to the metatarsals; here the radius of gyration is
 * taken as the same fraction of the whole foot length.
 */
public record DempsterWinter() implements SegmentTable {
    private static final List<SegmentRow> ROWS = List.of(
            row("Hand", "wrist axis - knuckle II of middle finger", 0.006, 0.506, 0.297),
            row("Forearm", "elbow axis - ulnar styloid", 0.016, 0.43, 0.303),
            row("Upper arm", "glenohumeral axis - elbow axis", 0.028, 0.436, 0.322),
            row("Forearm hand", "elbow axis - ulnar styloid", 0.022, 0.682, 0.468),
            row("Total arm", "glenohumeral - ulnar styloid", 0.05, 0.53, 0.368),
            row("Foot", "lateral malleolus - head of metatarsal II", 0.0145, 0.5, 0.475),
            row("Leg", "femoral condyles - medial malleolus", 0.0465, 0.433, 0.302),
            row("Thigh", "greater trochanter - femoral condyles", 0.1, 0.433, 0.323),
            row("Foot leg", "femoral condyles - medial malleolus", 0.061, 0.606, 0.416),
            row("Total leg", "greater trochanter - medial malleolus", 0.161, 0.447, 0.326),
            row("Head neck", "C7-T1 & 1st rib - ear canal", 0.081, 1.0, 0.495),
            row("Thorax", "C7-T1 - T12-L1 & diaphragm", 0.216, 0.82, Double.NaN),
            row("Abdomen", "T12-L1 - L4-L5", 0.139, 0.44, Double.NaN),
            row("Pelvis", "L4-L5 - greater trochanter", 0.142, 0.105, Double.NaN),
            row("Thorax abdomen", "C7-T1 - L4-L5", 0.355, 0.63, Double.NaN),
            row("Abdomen pelvis", "T12-L1 - greater trochanter", 0.281, 0.27, Double.NaN),
            row("Trunk", "greater trochanter - glenohumeral", 0.497, 0.5, Double.NaN),
            row("Trunk head neck", "greater trochanter - glenohumeral", 0.578, 0.66, 0.503),
            row("HAT", "greater trochanter - glenohumeral", 0.678, 0.626, 0.496));

    private static SegmentRow row(String segment, String endpoints, double mass, double com, double gyration) {
        return new SegmentRow(segment, endpoints, mass, com, gyration);
    }

    private static SegmentRow named(String segment) {
        for (SegmentRow row : ROWS) {
            if (row.segment().equals(segment)) {
                return row;
            }
        }
        throw new Refusal(
                Fault.OUTSIDE_PUBLISHED_RANGE, segment, Double.NaN, Double.NaN, "", "the table has no " + segment);
    }

    @Override
    public String name() {
        return "Dempster/Winter";
    }

    @Override
    public String source() {
        return "Winter, Biomechanics and Motor Control of Human Movement, Table 4.1, after Dempster 1955";
    }

    @Override
    public SegmentRow thigh(Sex sex) {
        return named("Thigh");
    }

    @Override
    public SegmentRow shank(Sex sex) {
        return named("Leg");
    }

    @Override
    public SegmentRow foot(Sex sex) {
        return named("Foot");
    }

    @Override
    public SegmentRow upperArm(Sex sex) {
        return named("Upper arm");
    }

    @Override
    public SegmentRow forearmAndHand(Sex sex) {
        return named("Forearm hand");
    }

    @Override
    public Optional<SegmentRow> headArmsTrunk(Sex sex) {
        return Optional.of(named("HAT"));
    }

    @Override
    public List<SegmentRow> rows(Sex sex) {
        return ROWS;
    }
}
