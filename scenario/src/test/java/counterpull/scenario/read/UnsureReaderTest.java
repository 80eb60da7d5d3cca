package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.uncertainty.Input;
import counterpull.engine.uncertainty.Stated;
import counterpull.scenario.Files;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.tree.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Standard uncertainties that a file states. */
class UnsureReaderTest {
    private static List<Problem> problems(String from, String to) {
        String text = Files.shipped("example.yaml");
        assertThat(text).contains(from);
        return ScenarioReader.read(List.of(Source.of("a.yaml", text.replace(from, to))))
                .problems()
                .all();
    }

    @Test
    void arriveInSi() {
        Stated stated = Files.example().unsure().stated(Files.example().client());
        assertThat(stated.of(Input.RAIL_ANGLE)).isCloseTo(Math.toRadians(0.5), within(1e-15));
        assertThat(stated.of(Input.FRICTION_CONSTANT)).isEqualTo(2);
        assertThat(stated.of(Input.FRICTION_COEFFICIENT)).isEqualTo(0.005);
        assertThat(stated.of(Input.PLATES)).isEqualTo(0.02);
        assertThat(stated.rubber().get("R1")).isEqualTo(new Stated.Rubber(0.04, 0.002));
        assertThat(stated.source(Input.HIP_SHIFT)).isEqualTo("stated");
        assertThat(Files.example().doubts().all()).extracting("name").contains("left thigh, hip to knee", "pull of R1");
    }

    @Test
    void ofAnyOtherExerciseToo() {
        assertThat(Files.exercise().unsure().inputs()).containsEntry(Input.READINGS, 0.05);
        assertThat(Files.exercise().doubts().all()).extracting("source").contains("stated");
    }

    @Test
    void whatOnlyAnotherExerciseHasIsAProblem() {
        assertThat(problems("  trunk: 3 deg ", "  readings of a machine: 5 % "))
                .extracting(Problem::code)
                .containsExactly(Code.CONTRADICTION);
    }

    @Test
    void aPieceThatTheKitDoesNotHaveIsAProblem() {
        assertThat(problems("{tag: R1, force: 4 %", "{tag: R11, force: 4 %"))
                .extracting(Problem::code)
                .containsExactly(Code.UNKNOWN_NAME);
        assertThat(problems("    - {tag: R1, force: 4 %", "    - {tag: R1}\n    - {tag: R1, force: 4 %"))
                .extracting(Problem::code)
                .containsExactly(Code.DUPLICATE_NAME);
    }

    @Test
    void aSlipOfTheUnitIsAProblem() {
        assertThat(problems("lengths: 5 mm", "lengths: 5 m")).hasSize(1);
        assertThat(problems("lengths: 5 mm", "lengths: -5 mm")).hasSize(1);
        assertThat(problems("seconds: 10 %", "seconds: 10 s"))
                .extracting(Problem::code)
                .containsExactly(Code.WRONG_UNIT);
    }
}
