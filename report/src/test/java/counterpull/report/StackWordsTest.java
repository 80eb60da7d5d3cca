package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.scenario.units.Units;
import org.junit.jupiter.api.Test;

/** On a press that a weight stack drives the plates are said to be on the stack. */
class StackWordsTest {
    private static String stack() {
        return Demo.text()
                .replace("  # stack:", "  stack:")
                .replace("  plates each side: [20 kg, 10 kg]\n", "")
                .replace("plates go on: in pairs", "plates go on: one at a time");
    }

    @Test
    void whatIsLoadedTodayIsOnTheStack() {
        Findings today = Demo.asLoaded(stack(), Units.METRIC);
        assertThat(today.first().plates().words()).isEqualTo("2.5 kg on the stack");
        assertThat(Demo.usual().first().plates().words()).doesNotContain("stack");
    }

    @Test
    void whatASearchFoundIsOnTheStack() {
        Findings found = Demo.findings(stack(), Units.METRIC);
        assertThat(found.first().plates().total()).isPositive();
        assertThat(found.first().plates().words()).endsWith("on the stack");
        assertThat(new LoadingWords(found.first(), found.units()).loading())
                .anyMatch(step -> step.startsWith("Choose on the stack: "));
    }
}
