package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.profile.Limb;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.IsometricTest.Meaning;
import counterpull.engine.strength.StrengthCurve;
import counterpull.engine.strength.Tester;
import counterpull.scenario.Files;
import counterpull.scenario.PressScenario;
import counterpull.scenario.content.Ended;
import counterpull.scenario.content.StrengthTest;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.tree.Source;
import counterpull.scenario.write.ScenarioWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How a strength test ended: read, used, told and written back. */
class EndedTest {
    private static final double DEEP = Math.toRadians(90);

    private static String text(String ended) {
        return Files.shipped("example.yaml").replace("ended: reached ", ended);
    }

    private static PressScenario read(String ended) {
        return (PressScenario) Files.read(List.of(Source.of("a.yaml", text(ended))));
    }

    private static StrengthTest second(PressScenario scenario) {
        return scenario.limb(Side.LEFT).orElseThrow().strength().tests().get(1);
    }

    private static StrengthCurve knee(PressScenario scenario) {
        Limb left = scenario.person().limbs().stream()
                .filter(limb -> limb.side() == Side.LEFT)
                .findFirst()
                .orElseThrow();
        return left.strength().of(Action.KNEE_EXTENSION).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Ended.class)
    void eachWordIsReadAndWrittenBack(Ended ended) {
        PressScenario scenario = read("ended: " + ended.words() + " ");
        assertThat(second(scenario).ended()).isEqualTo(ended);
        assertThat(second(scenario).test().meaning())
                .isEqualTo(ended == Ended.REACHED ? Meaning.REACHED : Meaning.AT_LEAST);
        assertThat(Files.read(List.of(Source.of("a.json", ScenarioWriter.json(scenario)))))
                .isEqualTo(scenario);
    }

    @Test
    void leftOutItWasReached() {
        assertThat(read("# ")).isEqualTo(read("ended: reached "));
        assertThat(ScenarioWriter.json(read("# "))).doesNotContain("\"ended\"");
    }

    /** The second test reads 93 N·m at 90°, below the published curve as the first test bends it: as a floor it says little. */
    @Test
    void aFloorLeavesTheCurveHigherThanTheSameTestReached() {
        StrengthCurve reached = knee(read("ended: reached "));
        StrengthCurve floor = knee(read("ended: pain "));
        assertThat(floor.held(DEEP)).isGreaterThan(1.1 * reached.held(DEEP));
        assertThat(reached.source()).startsWith("2 strength tests of this person");
        assertThat(floor.source()).startsWith("one strength test and one floor (a test stopped early) of this person");
    }

    @Test
    void anotherWordIsRefusedWithTheWordsThereAre() {
        List<Problem> problems = ScenarioReader.read(List.of(Source.of("a.yaml", text("ended: tired "))))
                .problems()
                .all();
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(Code.NOT_A_CHOICE);
            assertThat(problem.toString()).contains("pain", "slip", "overpowered");
        });
    }

    @Test
    void aTestCannotMeanOtherThanHowItEnded() {
        IsometricTest floor = IsometricTest.atLeast(1, 100, 0.1);
        assertThatThrownBy(() -> new StrengthTest(Action.KNEE_EXTENSION, Tester.HAND_HELD, Ended.REACHED, floor))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reached");
    }
}
