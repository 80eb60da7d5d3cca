package counterpull.scenario.problem;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Fault;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProblemsTest {
    @ParameterizedTest
    @EnumSource(Fault.class)
    void everyFaultOfTheEngineHasItsCode(Fault fault) {
        assertThat(Code.of(fault).text()).isEqualTo(fault.code());
    }

    @Test
    void codesAreUniqueAndPlain() {
        List<String> codes = Arrays.stream(Code.values()).map(Code::text).toList();
        assertThat(codes).doesNotHaveDuplicates().allMatch(code -> code.matches("[a-z]+(-[a-z]+)*"));
    }

    @Test
    void aProblemIsOneLineWhateverTheFileHeld() {
        Key key = Key.TOP.key("person").key("thigh\u0007\n" + "x".repeat(500)).item(3);
        Problem problem = new Problem(
                Code.OUTSIDE_LIMITS,
                new Place("a.yaml", 12, 9, key),
                new Found("9\u001b[31m m", "m", "1 m"),
                "9 m is above 1 m, the limit for this value",
                "Check it");
        assertThat(problem.line())
                .startsWith("a.yaml:12:9  person.thigh··xxx")
                .endsWith("…[3]: 9 m is above 1 m, the limit for this value. Check it. [outside-limits]")
                .doesNotContain("\n", "\u0007");
        assertThat(problem.found().value()).isEqualTo("9·[31m m");
    }

    @Test
    void showsFiftyInTheFilesOrderAndCountsTheRest() {
        Problems problems = new Problems();
        for (int i = 2000; i > 0; i--) {
            problems.add(Problem.of(Code.UNKNOWN_KEY, new Place("a", i, 1, Key.TOP), "m" + i, ""));
        }
        assertThat(problems.count()).isEqualTo(2000);
        assertThat(problems.lines()).hasSize(51).last().isEqualTo("and 1950 more");
        assertThat(problems.all())
                .hasSize(1000)
                .isSortedAccordingTo((a, b) -> a.place().line() - b.place().line());
    }
}
