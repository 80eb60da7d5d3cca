package counterpull.engine.body;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Segments of young men and women, measured by gamma scanning and moved to joint centres.
 *
 * <p>Source: de Leva P 1996, J Biomech 29(9):1223–1230, Table 4, the column of the transverse axis. The shank is the row
 * between joint centres (KJC–AJC), not the printed main row to the lateral malleolus.
 *
 * <p>Ours differs twice. Forearm and hand are one segment with the hand straight, the hand's length taken from the mean
 * lengths of the table (from memory: forearm 268.9 and hand 86.2 mm of men, 264.3 and 78.0 mm of women). The foot's centre
 * of mass is where {@link Foot} has it. There is no row of head, arms and trunk together.
 */
public record DeLeva1996() implements SegmentTable {
    private static final double HAND_OVER_FOREARM_MALE = 86.2 / 268.9;
    private static final double HAND_OVER_FOREARM_FEMALE = 78.0 / 264.3;

    private static List<DeLevaRow> table(Sex sex) {
        return sex == Sex.MALE ? DeLevaTable4.MALE : DeLevaTable4.FEMALE;
    }

    private static SegmentRow named(String segment, Sex sex) {
        for (DeLevaRow row : table(sex)) {
            if (row.segment().equals(segment)) {
                return row.aboutTransverseAxis();
            }
        }
        throw new Refusal(
                Fault.OUTSIDE_PUBLISHED_RANGE, segment, Double.NaN, Double.NaN, "", "the table has no " + segment);
    }

    @Override
    public String name() {
        return "de Leva 1996";
    }

    @Override
    public String source() {
        return "de Leva 1996, J Biomech 29(9):1223–1230, Table 4";
    }

    @Override
    public SegmentRow thigh(Sex sex) {
        return named("Thigh", sex);
    }

    @Override
    public SegmentRow shank(Sex sex) {
        return named("Shank", sex);
    }

    @Override
    public SegmentRow foot(Sex sex) {
        return named("Foot", sex);
    }

    @Override
    public SegmentRow upperArm(Sex sex) {
        return named("Upper arm", sex);
    }

    @Override
    public SegmentRow forearmAndHand(Sex sex) {
        double ratio = sex == Sex.MALE ? HAND_OVER_FOREARM_MALE : HAND_OVER_FOREARM_FEMALE;
        return named("Forearm", sex).joinedTo(named("Hand", sex), ratio);
    }

    @Override
    public Optional<SegmentRow> headArmsTrunk(Sex sex) {
        return Optional.empty();
    }

    @Override
    public List<SegmentRow> rows(Sex sex) {
        List<SegmentRow> rows = new ArrayList<>();
        for (DeLevaRow row : table(sex)) {
            rows.add(row.aboutTransverseAxis());
        }
        return List.copyOf(rows);
    }
}
