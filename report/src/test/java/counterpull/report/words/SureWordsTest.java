package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.strength.Tester;
import counterpull.engine.uncertainty.Chance;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Spread;
import counterpull.engine.uncertainty.Trial;
import counterpull.report.Demo;
import counterpull.report.Exercises;
import counterpull.report.result.SureJson;
import counterpull.report.result.SureTables;
import counterpull.report.table.Csv;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import org.junit.jupiter.api.Test;

/** How sure an answer is, as it is said. */
class SureWordsTest {
    private static <T extends Trial<T>> HowSure sure(Doubts<T> doubts, Looked looked) {
        return HowSure.of(doubts, new Sampling<>(doubts, looked, 1, 300).bands(), Tester.BELT_FIXED);
    }

    private static HowSure press() {
        PressScenario scenario = Demo.scenario(Demo.text());
        return sure(scenario.doubts(), scenario.looked());
    }

    private static HowSure squat() {
        ExerciseScenario scenario = Exercises.scenario(Exercises.text("squat-bar"));
        return sure(scenario.doubts(), scenario.looked());
    }

    @Test
    void aChanceHasAsManyDigitsAsItsDrawsBear() {
        assertThat(SureWords.chance(new Chance(1166, 10_000))).isEqualTo("11.7\u00A0% (\u00B10.3)");
        assertThat(SureWords.chance(new Chance(4300, 10_000))).isEqualTo("43\u00A0% (\u00B11)");
        assertThat(SureWords.chance(new Chance(12, 100))).isEqualTo("12\u00A0% (\u00B13)");
        assertThat(SureWords.chance(new Chance(0, 10_000))).isEqualTo("less than 1 in 3,000");
        assertThat(SureWords.chance(new Chance(0, 2_000))).isEqualTo("less than 1 in 660");
        assertThat(SureWords.chance(new Chance(10_000, 10_000))).isEqualTo("100\u00A0% (\u00B11)");
    }

    @Test
    void anUncertaintyIsInTheReadersUnits() {
        Spread length = new Spread(Spread.Kind.LENGTH, 0.0127);
        assertThat(SpreadWords.of(length, UnitSet.METRIC)).isEqualTo("\u00B11.3\u00A0cm");
        assertThat(SpreadWords.of(length, UnitSet.IMPERIAL)).isEqualTo("\u00B10.5\u00A0in");
        assertThat(SpreadWords.of(new Spread(Spread.Kind.SHARE, 0.057), UnitSet.METRIC))
                .isEqualTo("\u00B15.7\u00A0%");
        assertThat(SpreadWords.of(new Spread(Spread.Kind.NUMBER, 0.05), UnitSet.METRIC))
                .isEqualTo("\u00B10.05");
    }

    @Test
    void aPressSaysBandChanceAndWhatContributes() {
        SureWords words = new SureWords(press(), UnitSet.METRIC);
        assertThat(words.hardest()).contains("Hardest as measured: ", "of what it has", "nine in ten of 300 draws");
        assertThat(words.ceiling()).contains("The ceiling of ", " with a chance of ");
        assertThat(words.contributors()).startsWith("Most of that comes from ");
        assertThat(words.next().orElseThrow()).startsWith("Next reading: ");
        assertThat(words.notVaried()).contains("what speed takes from strength");
    }

    @Test
    void anExerciseWithoutACeilingIsHeldToAllThatThereIs() {
        HowSure sure = squat();
        assertThat(sure.bands().looked().ceiling()).isEqualTo(1);
        assertThat(new SureWords(sure, UnitSet.METRIC).ceiling()).startsWith("More than there is, 100\u00A0%");
    }

    @Test
    void theTablesHoldWhatTheBandsSay() {
        HowSure sure = squat();
        Table bands = SureTables.bands(sure, counterpull.engine.motion.Phase.LIFTING);
        assertThat(bands.rows()).isEqualTo(101);
        assertThat(bands.column("knee_low")).isNotNull();
        Table all = SureTables.everything(sure);
        assertThat(all.rows()).isEqualTo(3 * 101 * sure.profile().joints().size());
        assertThat(Csv.of(all, UnitSet.METRIC)).startsWith("phase,knee_flexion [°],joint,low [%],middle [%],high [%]");
        Table ranked = SureTables.contributions(sure.contributions().orElseThrow(), UnitSet.METRIC);
        Table whole = SureTables.allContributions(sure.contributions().orElseThrow(), UnitSet.METRIC);
        assertThat(ranked.rows()).isBetween(2, whole.rows());
        assertThat(SureTables.rest(sure.contributions().orElseThrow()))
                .contains("The other " + (whole.rows() - ranked.rows()) + " inputs");
        assertThat(SureJson.of(sure))
                .contains("\"chance_of_passing_the_ceiling\"", "\"next_readings\"", "\"not_varied\"");
    }
}
