package counterpull.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.report.table.Csv;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The tables say what the profile says. */
class ProfileTablesTest {
    /** Rows of a CSV without quoted line breaks, by column key. */
    private static List<Map<String, String>> rows(String csv) {
        List<String> lines = csv.lines().toList();
        String[] heads = lines.get(0).split(",");
        return lines.stream()
                .skip(1)
                .map(line -> {
                    String[] cells = line.split(",", -1);
                    Map<String, String> row = new HashMap<>();
                    for (int i = 0; i < heads.length; i++) {
                        row.put(heads[i].replaceAll(" \\[.*", ""), cells[i]);
                    }
                    return row;
                })
                .toList();
    }

    private static double number(Map<String, String> row, String key) {
        return Double.parseDouble(row.get(key));
    }

    @Test
    void everyCellOfTheCsvIsTheProfilesOwnNumber() {
        PressProfile profile = Demo.usual().first().profile();
        List<Map<String, String>> rows = rows(ProfileTables.csv(profile, UnitSet.SI));
        int n = profile.positions();
        assertThat(rows).hasSize(2 * 3 * n);
        for (int limb = 0; limb < 2; limb++) {
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < n; i++) {
                    Map<String, String> row = rows.get((limb * 3 + phase.ordinal()) * n + i);
                    var leg = profile.limbs().get(limb);
                    assertThat(row).containsEntry("limb", leg.side().words()).containsEntry("phase", phase.words());
                    same(row, "force", profile.force(phase, i));
                    same(row, "mark", profile.mark(i));
                    for (Joint joint : Joint.LEG) {
                        same(row, joint.words() + "_torque", leg.torque(joint, phase, i));
                        same(row, joint.words() + "_effort", leg.effort(joint, phase, i));
                        same(row, joint.words() + "_moment_arm", leg.momentArm(joint, phase, i));
                    }
                    same(row, "kneecap_stress", leg.kneecapStress(phase, i));
                    same(row, "line_1_looseness", profile.lines().get(0).looseness(i));
                }
            }
        }
    }

    /** Written with every digit, so equality is exact; empty exactly where not known. */
    private static void same(Map<String, String> row, String key, double value) {
        if (Double.isNaN(value)) {
            assertThat(row).containsEntry(key, "");
        } else {
            // + 0.0 turns a negative zero into the zero that is written
            assertThat(number(row, key)).as(key).isEqualTo(value + 0.0);
        }
    }

    @Test
    void partsAddUpToWhatTheyArePartsOf() {
        Table table = ProfileTables.everything(Demo.usual().first().profile());
        for (int row = 0; row < table.rows(); row += 7) {
            for (Joint joint : Joint.LEG) {
                double sum = 0;
                for (Part part : Part.values()) {
                    sum += value(
                            table, joint.words() + "_torque_" + part.name().toLowerCase(java.util.Locale.ROOT), row);
                }
                // two orders of adding up the same dozen summands: rounding only
                assertThat(sum).isCloseTo(value(table, joint.words() + "_torque", row), within(1e-9));
            }
            double force = 0;
            for (Part part : Part.values()) {
                force += value(table, "force_" + part.name().toLowerCase(java.util.Locale.ROOT), row);
            }
            assertThat(force).isCloseTo(value(table, "force", row), within(1e-9));
        }
    }

    private static double value(Table table, String key, int row) {
        return ((NumberColumn) table.column(key)).value(row);
    }

    @Test
    void peoplesUnitsAreTheSameNumbersTurned() {
        PressProfile profile = Demo.usual().first().profile();
        Map<String, String> row =
                rows(ProfileTables.csv(profile, UnitSet.IMPERIAL)).get(0);
        // international inch 0.0254 m and pound-force 4.4482216152605 N, exact by definition; 1e-9 for one rounding
        assertThat(number(row, "mark")).isCloseTo(profile.mark(0) / 0.0254, within(1e-9));
        assertThat(number(row, "force")).isCloseTo(profile.force(Phase.HELD, 0) / 4.4482216152605, within(1e-9));
        double perDegree =
                number(rows(ProfileTables.csv(profile, UnitSet.METRIC)).get(0), "knee_torque_per_push_angle");
        assertThat(perDegree)
                .isCloseTo(
                        profile.limbs().get(0).torquePerPushAngle(Joint.KNEE, Phase.HELD, 0) * Math.PI / 180,
                        within(1e-9));
    }

    @Test
    void theDictionaryExplainsEveryColumn() {
        PressProfile profile = Demo.usual().first().profile();
        String dictionary = ProfileTables.dictionary(profile, UnitSet.SI);
        Table table = ProfileTables.everything(profile);
        assertThat(dictionary.split("\r\n")).hasSize(table.columns().size() + 1);
        assertThat(table.columns()).allSatisfy(column -> {
            assertThat(dictionary).contains("\r\n" + column.head().key() + ",");
            assertThat(column.head().meaning()).isNotBlank();
        });
        assertThat(table.columns().stream().map(column -> column.head().key()).distinct())
                .hasSameSizeAs(table.columns());
    }

    @Test
    void theTerminalShowsNinePositionsAndAllOnDemand() {
        PressProfile profile = Demo.usual().first().profile();
        TextChoice force =
                TextChoice.usual(UnitSet.METRIC).withGroups(Set.of(Group.FORCE)).withWidth(120);
        assertThat(lines(ProfileTables.text(profile, force))).isEqualTo(6 * 9);
        assertThat(lines(ProfileTables.text(profile, force.withPositions(profile.positions()))))
                .isEqualTo(6L * profile.positions());
        String first = String.valueOf(Math.round(profile.force(Phase.LIFTING, 0)));
        assertThat(ProfileTables.text(profile, force)).contains(" " + first + " ");
    }

    private static long lines(String text) {
        return text.lines().filter(line -> line.matches("\\s+\\d.*")).count();
    }

    @Test
    void noLineOneLimbAndThreeLinesAllHaveTheirTables() {
        for (Findings findings : List.of(Cases.noLines(), Cases.oneLimb(), Cases.hardest())) {
            PressProfile profile = findings.first().profile();
            Table table = ProfileTables.everything(profile);
            assertThat(table.rows()).isEqualTo(profile.limbs().size() * 3 * profile.positions());
            long lines = table.columns().stream()
                    .filter(column -> column.head().key().endsWith("_looseness"))
                    .count();
            assertThat(lines).isEqualTo(profile.lines().size());
            assertThat(Csv.of(table, UnitSet.METRIC)).doesNotContain("NaN", "Infinity");
            assertThat(ProfileTables.text(
                                    profile,
                                    TextChoice.usual(findings.unitSet()).withWidth(80))
                            .lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        }
    }

    @Test
    void positionsAreSpreadEvenlyWithBothEnds() {
        assertThat(ProfileTables.evenly(101, 9)).containsExactly(0, 13, 25, 38, 50, 63, 75, 88, 100);
        assertThat(ProfileTables.evenly(3, 9)).containsExactly(0, 1, 2);
    }
}
