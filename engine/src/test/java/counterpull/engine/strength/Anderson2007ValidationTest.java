package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import counterpull.engine.validation.Published;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class Anderson2007ValidationTest {
    private static final String SECTION = "Strength curves, Anderson 2007";
    private static final String COMPUTED = "Anderson 2007, equations and Table 3; computed apart from this program";
    private static final Map<String, Action> ACTIONS = Map.of(
            "hip ext", Action.HIP_EXTENSION,
            "hip flex", Action.HIP_FLEXION,
            "knee ext", Action.KNEE_EXTENSION,
            "knee flex", Action.KNEE_FLEXION,
            "ankle PF", Action.ANKLE_PLANTARFLEXION,
            "ankle DF", Action.ANKLE_DORSIFLEXION);
    private static final Map<String, AgeGroup> GROUPS =
            Map.of("18-25", AgeGroup.YOUNG, "55-65", AgeGroup.MIDDLE, ">65", AgeGroup.SENIOR);

    static List<Anderson2007> everyRow() {
        return Anderson2007Table3.ROWS;
    }

    @Test
    void constantsEqualTheDataFile() throws IOException {
        List<String[]> file = ReferenceFile.rows("anderson2007-table3.tsv");
        assertThat(file).as("36 rows of means and 36 of deviations").hasSize(72);
        assertThat(everyRow()).hasSize(36);
        for (String[] cell : file) {
            Anderson2007 row = Anderson2007.row(
                    ACTIONS.get(cell[0] + " " + cell[1]),
                    cell[2].equals("M") ? Sex.MALE : Sex.FEMALE,
                    GROUPS.get(cell[3]));
            Anderson2007.Coefficients ours = cell[4].equals("mean") ? row.mean() : row.deviation();
            assertThat(inOrder(ours))
                    .as(String.join(" ", cell))
                    .containsExactly(List.of(cell).subList(5, 15).stream()
                            .map(Double::valueOf)
                            .toArray(Double[]::new));
        }
    }

    private static List<Double> inOrder(Anderson2007.Coefficients c) {
        List<Double> numbers =
                new ArrayList<>(List.of(c.held().c1(), c.held().c2(), c.held().c3()));
        numbers.addAll(List.of(c.speed().c4(), c.speed().c5(), c.speed().c6()));
        numbers.addAll(List.of(
                c.passive().b1(),
                c.passive().k1(),
                c.passive().b2(),
                c.passive().k2()));
        return numbers;
    }

    @Test
    void torqueOfTheYoungGroups() throws IOException {
        for (String[] cell : ReferenceFile.rows("anderson2007-computed.tsv")) {
            double[] number = numbers(cell);
            Anderson2007 row = Anderson2007.row(Action.valueOf(cell[0]), Sex.valueOf(cell[1]), AgeGroup.YOUNG);
            double scale = number[2] * 9.81 * number[3];
            double angle = Math.toRadians(number[4]);
            double held = row.held(angle, scale);
            String name = row.action().words() + ", " + cell[1].toLowerCase(java.util.Locale.ROOT) + " 18 to 25, "
                    + cell[2] + " kg, " + cell[3] + " m, at " + cell[4] + "°";
            torque(name + ", held", number[5], held);
            torque(name + ", shortening at 60°/s", number[6], held * row.shorteningFactor(Math.PI / 3));
            assertThat(held * row.shorteningFactor(Math.PI)).as(name).isCloseTo(number[7], within(0.0051));
            assertThat(held * row.lengtheningFactor(-Math.PI / 3)).as(name).isCloseTo(number[8], within(0.0051));
            assertThat(row.passive(angle)).as(name).isCloseTo(number[9], within(0.00051));
        }
    }

    private static void torque(String name, double published, double ours) {
        Published.of(name, "N·m")
                .section(SECTION)
                .source(COMPUTED)
                .value(published)
                .ours(ours)
                .within(0.0051, "half of the last printed digit; g = 9.81 m/s² as in that table");
    }

    private static double[] numbers(String[] cell) {
        double[] number = new double[cell.length];
        for (int i = 2; i < cell.length; i++) {
            number[i] = Double.parseDouble(cell[i]);
        }
        return number;
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void coefficientsMeanWhatThePaperSays(Anderson2007 row) {
        assertThat(row.shorteningFactor(0)).as("all of it at rest").isEqualTo(1);
        assertThat(row.shorteningFactor(row.mean().speed().c4()))
                .as("75 % at C4")
                .isCloseTo(0.75, within(1e-12));
        assertThat(row.shorteningFactor(row.mean().speed().c5()))
                .as("50 % at C5")
                .isCloseTo(0.50, within(1e-12));
        assertThat(row.held(row.mean().held().c3(), 1000))
                .as("greatest at C3, C1 of body weight × stature")
                .isEqualTo(1000 * row.mean().held().c1());
    }

    @Test
    void sharesLeftAtTheTabulatedSpeeds() {
        share("C4", 0.75, row -> row.shorteningFactor(row.mean().speed().c4()));
        share("C5", 0.50, row -> row.shorteningFactor(row.mean().speed().c5()));
    }

    private static void share(String coefficient, double published, ToDoubleFunction<Anderson2007> ours) {
        double farthest = published;
        for (Anderson2007 row : everyRow()) {
            double share = ours.applyAsDouble(row);
            farthest = Math.abs(share - published) > Math.abs(farthest - published) ? share : farthest;
        }
        Published.of("share of held torque left at speed " + coefficient + ", the farthest of all 36 rows", "")
                .section(SECTION)
                .source("Anderson 2007, meaning of C4 and C5; looked up")
                .value(published)
                .ours(farthest)
                .within(1e-12, "exact by the equation, rounding apart");
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void fasterShorteningNeverLeavesMoreAndNeverLessThanNothing(Anderson2007 row) {
        double before = 1;
        for (double speed = 0.05; speed < 40; speed += 0.05) {
            double factor = row.shorteningFactor(speed);
            assertThat(factor).isBetween(0.0, before);
            before = factor;
        }
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void thereIsNoSecondHump(Anderson2007 row) {
        double halfArch = Math.PI / 2 / row.mean().held().c2();
        double best = row.mean().held().c3();
        assertThat(row.held(best + halfArch + 0.01, 1000)).isZero();
        assertThat(row.held(best - halfArch - 0.01, 1000)).isZero();
        assertThat(row.held(best + 2 * Math.PI / row.mean().held().c2(), 1000))
                .as("one period on, where the bare cosine is at its greatest again")
                .isZero();
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void passiveTorqueIsOneCurveForBothActionsOfAJoint(Anderson2007 row) {
        Action opposite = switch (row.action()) {
            case HIP_EXTENSION -> Action.HIP_FLEXION;
            case HIP_FLEXION -> Action.HIP_EXTENSION;
            case KNEE_EXTENSION -> Action.KNEE_FLEXION;
            case KNEE_FLEXION -> Action.KNEE_EXTENSION;
            case ANKLE_PLANTARFLEXION -> Action.ANKLE_DORSIFLEXION;
            case ANKLE_DORSIFLEXION -> Action.ANKLE_PLANTARFLEXION;
            default -> throw new AssertionError("no row of the leg: " + row.action());
        };
        Anderson2007 other = Anderson2007.row(opposite, row.sex(), row.group());
        for (double angle = -0.5; angle < 1; angle += 0.25) {
            assertThat(row.passive(angle)).isEqualTo(-other.passive(angle));
        }
    }

    @Test
    void passiveHipTorqueExplodesAndSoStaysOut() {
        Anderson2007 row = Anderson2007.row(Action.HIP_EXTENSION, Sex.MALE, AgeGroup.YOUNG);
        assertThat(row.passive(Math.toRadians(75)))
                .as("no hip makes 1,090 N·m passively at 75°: the mean coefficients are no mean curve")
                .isCloseTo(1089.892, within(0.001));
        assertThat(row.passive(Math.toRadians(90))).isCloseTo(5120.815, within(0.001));
        PublishedCurve curve = PublishedCurve.of(Action.HIP_EXTENSION, new Physique(Sex.MALE, 21.5, 75, 1.75));
        assertThat(curve.held(Math.toRadians(90)))
                .as("the curve is the active part alone: 169.68 N·m at g = 9.81, less 0.03 % at standard gravity")
                .isCloseTo(169.68 * 9.80665 / 9.81, within(0.01));
        for (double degrees = -15; degrees <= 110; degrees++) {
            assertThat(curve.held(Math.toRadians(degrees))).isLessThan(curve.peak() + 1e-9);
        }
    }

    @Test
    void calfTorqueNeverReachesZeroHoweverFast() {
        for (Anderson2007 row : everyRow()) {
            Anderson2007.Speed speed = row.mean().speed();
            boolean reachesZero = 3 * speed.c4() > speed.c5();
            assertThat(reachesZero)
                    .as("only the plantarflexion rows lack a speed of zero torque: %s", row)
                    .isEqualTo(row.action() != Action.ANKLE_PLANTARFLEXION);
            double atNoSpeedAMuscleHas = row.shorteningFactor(100);
            assertThat(atNoSpeedAMuscleHas > 0).isNotEqualTo(reachesZero);
        }
    }

    @Test
    void theFittedEccentricFactorIsNotUsed() {
        Anderson2007 row = Anderson2007.row(Action.KNEE_EXTENSION, Sex.MALE, AgeGroup.YOUNG);
        assertThat(row.lengtheningFactor(-Math.PI / 3))
                .as("below 1 where muscle is known to make more")
                .isCloseTo(0.898, within(0.0005));
        assertThat(row.lengtheningFactor(-25)).as("and below 0 when very fast").isNegative();
        PublishedCurve curve = PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.MALE, 21.5, 75, 1.75));
        assertThat(curve.atSpeed(1, -Math.PI / 3)).isEqualTo(curve.held(1));
        assertThat(curve.atSpeed(1, -25)).isEqualTo(curve.held(1));
    }

    @Test
    void everyActionOfTheLegIsCoveredForBothSexesAndAllGroups() {
        for (Action action : ACTIONS.values()) {
            assertThat(Anderson2007.covers(action)).isTrue();
            for (AgeGroup group : AgeGroup.values()) {
                assertThat(Anderson2007.row(action, Sex.FEMALE, group).group()).isEqualTo(group);
            }
        }
    }

    @Test
    void nobodyUnder18IsGivenAnAdultCurve() {
        assertThatThrownBy(() -> new Physique(Sex.FEMALE, 17.9, 60, 1.65))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("17.9")
                .hasMessageContaining("18");
    }
}
