package counterpull.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.Exercises;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChallengeTableTest {
    private static final Profile SQUAT = Exercises.profile("squat-bar");
    private static final Profile CUFF = Exercises.profile("knee-extension-cuff");
    private static final ChallengeTable BOTH = new ChallengeTable(
            List.of(new ChallengeTable.Entry("squat", SQUAT), new ChallengeTable.Entry("cuff", CUFF)));

    private static List<String> words(Table table, String key) {
        return java.util.stream.IntStream.range(0, table.rows())
                .mapToObj(row -> table.column(key).shown(row, UnitSet.METRIC))
                .toList();
    }

    private static double number(String key, int row) {
        return ((NumberColumn) BOTH.table().column(key)).value(row);
    }

    @Test
    void rowsByJointThenByExercise() {
        assertThat(BOTH.joints()).containsExactly(Joint.HIP, Joint.KNEE, Joint.ANKLE);
        assertThat(words(BOTH.table(), "joint")).containsExactly("hip", "knee", "knee", "ankle", "ankle");
        assertThat(words(BOTH.table(), "exercise")).containsExactly("squat", "squat", "cuff", "squat", "cuff");
    }

    @Test
    void aSquatIsHardestAtTheBottomForTheKneeAndACuffAtTheTop() {
        assertThat(words(BOTH.table(), "where").subList(1, 3)).containsExactly("most at the bottom", "most at the top");
        assertThat(words(BOTH.table(), "of").subList(1, 3)).containsExactly("knee extension", "knee extension");
    }

    @Test
    void theLargestTorqueAndItsAngleAreTheProfiles() {
        double most = 0;
        double angle = 0;
        for (LimbProfile limb : SQUAT.limbs()) {
            for (int i = 0; i < SQUAT.positions(); i++) {
                double torque = Math.abs(limb.torque(Joint.KNEE, Phase.LIFTING, i));
                angle = torque > most ? limb.angle(Joint.KNEE, i) : angle;
                most = Math.max(most, torque);
            }
        }
        // the same numbers read twice: rounding alone
        assertThat(number("at_most", 1)).isCloseTo(most, within(1e-12));
        assertThat(number("joint_angle_there", 1)).isCloseTo(angle, within(1e-12));
    }

    @Test
    void theEffortOfAThirdIsTheMeanOfItsKnownOnes() {
        int n = CUFF.positions();
        double sum = 0;
        for (int i = n - n / 3; i < n; i++) {
            sum += CUFF.effort(Joint.KNEE, Phase.LIFTING, i);
        }
        assertThat(number("effort_top", 2)).isCloseTo(sum / (n / 3), within(1e-12));
        // nothing is known of the ankle of a squat where it bends most
        assertThat(number("effort_bottom", 3)).isNaN();
    }

    @Test
    void oneAloneIsNoComparison() {
        List<ChallengeTable.Entry> one = List.of(new ChallengeTable.Entry("squat", SQUAT));
        assertThatThrownBy(() -> new ChallengeTable(one))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two or more");
    }
}
