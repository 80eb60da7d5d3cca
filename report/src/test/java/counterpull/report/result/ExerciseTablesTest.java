package counterpull.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.Exercises;
import counterpull.report.table.Column;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExerciseTablesTest {
    private static final ExerciseProfile LEVER = Exercises.profile("knee-extension-lever");

    private static double number(Table table, String key, int row) {
        return ((NumberColumn) table.column(key)).value(row);
    }

    private static List<String> keys(Table table) {
        return table.columns().stream().map(column -> column.head().key()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"knee-extension-lever", "squat-bar-chains", "pulldown-cable", "external-rotation-tubing"})
    void everyColumnOfTheCsvHasItsRowInTheDictionary(String name) {
        ExerciseProfile profile = Exercises.profile(name);
        List<String> csv = ExerciseTables.csv(profile, UnitSet.METRIC).lines().toList();
        List<String> dictionary = ExerciseTables.dictionary(profile, UnitSet.METRIC)
                .lines()
                .skip(1)
                .toList();
        List<String> heads = Arrays.stream(csv.get(0).split(","))
                .map(head -> head.replaceAll(" \\[.*", ""))
                .toList();
        assertThat(heads).doesNotHaveDuplicates();
        assertThat(dictionary).hasSameSizeAs(heads);
        for (int k = 0; k < heads.size(); k++) {
            assertThat(dictionary.get(k)).startsWith(heads.get(k));
        }
        // 3 phases at every position of every limb, and the head
        assertThat(csv).hasSize(profile.limbs().size() * 3 * profile.positions() + 1);
    }

    @Test
    void theLongTableHoldsTheProfilesNumbersInTheJointsOwnSense() {
        ExerciseProfile curl = Exercises.profile("knee-flexion-seated-lever");
        Table table = ExerciseTables.everything(curl);
        int row = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < curl.positions(); i++, row++) {
                assertThat(table.column("phase").exact(row, UnitSet.SI)).isEqualTo(phase.words());
                assertThat(number(table, "driving_angle", row)).isEqualTo(curl.driving(i));
                assertThat(number(table, "knee_torque", row))
                        .isEqualTo(curl.limbs().get(0).torque(Joint.KNEE, phase, i));
            }
        }
        assertThat(number(table, "knee_torque", 0)).isNegative();
    }

    @Test
    void forTheEyeEachJointIsInTheSenseThatIsAsked() {
        ExerciseProfile curl = Exercises.profile("knee-flexion-seated-lever");
        Table table = ExerciseTables.asked(curl, 0, Phase.LIFTING);
        assertThat(number(table, "knee_flexion_asked", 0))
                .isEqualTo(-curl.limbs().get(0).torque(Joint.KNEE, Phase.LIFTING, 0))
                .isPositive();
        assertThat(number(table, "knee_has", 0)).isEqualTo(curl.limbs().get(0).had(Joint.KNEE, Phase.LIFTING, 0));
    }

    @Test
    void partsAddUpToWhatIsAsked() {
        ExerciseProfile squat = Exercises.profile("squat-bar-chains");
        Table parts = ExerciseTables.parts(squat, 0, Phase.LIFTING);
        Table asked = ExerciseTables.asked(squat, 0, Phase.LIFTING);
        for (int i = 0; i < squat.positions(); i += 10) {
            double sum = 0;
            for (String key : keys(parts)) {
                sum += key.startsWith("hip_extension_") ? number(parts, key, i) : 0;
            }
            // some hundred N·m in double precision
            assertThat(sum).isCloseTo(number(asked, "hip_extension_asked", i), within(1e-9));
        }
    }

    @Test
    void theHardestNamesTheSideOnlyWhereThereAreTwo() {
        Table one = ExerciseTables.asked(Exercises.profile("knee-extension-cuff"), 0, Phase.LIFTING);
        Table two = ExerciseTables.asked(Exercises.profile("squat-bar"), 0, Phase.LIFTING);
        assertThat(one.column("hardest").shown(100, UnitSet.METRIC)).isEqualTo("knee extension");
        assertThat(two.column("hardest").shown(0, UnitSet.METRIC)).isEqualTo("left hip extension");
    }

    @Test
    void aPathIsCountedByTravelAndALoadByItsName() {
        ExerciseProfile row = Exercises.profile("row-cable");
        Table table = ExerciseTables.summary(row, 0, Phase.HELD);
        assertThat(keys(table)).startsWith("travel", "load_1");
        assertThat(table.columns().get(1).head().title()).isEqualTo("low cable");
        assertThat(number(table, "load_1", 7))
                .isEqualTo(row.limbs().get(0).force("low cable", Phase.HELD, 7).norm());
    }

    @Test
    void whatOnlySaysWhereAPadRollsIsNoColumn() {
        assertThat(ExerciseTables.everything(LEVER).columns())
                .extracting(column -> column.head().title())
                .contains("leg extension lever")
                .noneMatch(title -> title.contains("rolls"));
    }

    @Test
    void kneecapColumnsOnlyWhereThereIsAKnee() {
        assertThat(keys(ExerciseTables.everything(LEVER))).anyMatch(key -> key.contains("kneecap"));
        assertThat(keys(ExerciseTables.everything(Exercises.profile("elbow-flexion-dumbbell"))))
                .noneMatch(key -> key.contains("kneecap"));
    }

    @Test
    void textShowsThePhasesThatAreAskedFor() {
        TextChoice usual = TextChoice.usual(UnitSet.METRIC).withPositions(3);
        String all = ExerciseTables.text(LEVER, usual);
        assertThat(all)
                .contains("left, held", "left, lifting", "left, lowering")
                .doesNotContain("made of");
        String one = ExerciseTables.text(
                LEVER,
                usual.of(new TextChoice.Whose(TextChoice.Whose.all().sides(), java.util.Set.of(Phase.HELD)))
                        .withGroups(java.util.EnumSet.allOf(Group.class)));
        assertThat(one).contains("left, held", "what each torque is made of").doesNotContain("left, lifting");
    }

    @Test
    void jsonHoldsEveryCellAndNullWhereNothingIsKnown() throws IOException {
        ExerciseProfile squat = Exercises.profile("squat-bar");
        Table table = ExerciseTables.everything(squat);
        JsonNode root = new ObjectMapper().readTree(TableJson.of(table));
        assertThat(root.get("columns")).hasSameSizeAs(table.columns());
        assertThat(root.get("rows")).hasSize(table.rows());
        for (Column column : table.columns()) {
            JsonNode cell = root.get("rows").get(0).get(column.head().key());
            assertThat(cell).as(column.head().key()).isNotNull();
            if (column instanceof NumberColumn numbers && !Double.isNaN(numbers.value(0))) {
                assertThat(cell.doubleValue()).isEqualTo(numbers.value(0));
            }
        }
        assertThat(squat.limbs().get(0).had(Joint.ANKLE, Phase.values()[0], 0)).isNaN();
        assertThat(root.get("rows").get(0).get("ankle_strength").isNull()).isTrue();
        assertThat(root.get("columns").get(4).get("unit").textValue()).isEqualTo("rad");
    }
}
