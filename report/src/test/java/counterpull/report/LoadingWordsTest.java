package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.scenario.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loading in the right order, and a stop where it would not be safe. */
class LoadingWordsTest {
    private static LoadingWords of(Findings findings) {
        return new LoadingWords(findings.first(), findings.units());
    }

    @Test
    void rubberFromBelowIsHungWithTheCarriageDownOnItsStop() {
        List<String> steps = of(Demo.usual()).loading();
        assertThat(steps.get(0)).startsWith("Set the bottom stop at mark 20");
        assertThat(steps.get(1)).startsWith("Let the carriage rest on the stop");
        assertThat(steps.get(2)).startsWith("Plates left and right in turn");
        assertThat(steps.get(3)).startsWith("Rubber last: R1");
        assertThat(steps.get(steps.size() - 1)).contains("press from the stop");
        assertThat(of(Demo.usual()).unloading().get(1)).startsWith("Rubber off first");
        assertThat(of(Cases.noLines()).unloading()).noneMatch(step -> step.contains("Rubber"));
    }

    @Test
    void withoutRubberItIsRackedFirstThenStopped() {
        List<String> steps = of(Cases.noLines()).loading();
        assertThat(steps.get(0)).startsWith("Rack");
        assertThat(steps.get(1)).startsWith("Set the bottom stop");
        assertThat(steps.get(steps.size() - 1)).contains("unrack");
    }

    @Test
    void aCarriageThatRubberHoldsUpIsRefusedInWords() {
        // no plates, no friction, and a line from above that pulls 39 N where the bare carriage weighs 43 N along the
        // rail
        String light = Demo.text()
                .replace("plates each side: [20 kg, 10 kg]", "plates each side: []")
                .replace("plates in the middle: [2.5 kg]", "plates in the middle: []")
                .replace("constant: 15 N", "constant: 0 N")
                .replace("coefficient: 0.02", "coefficient: 0")
                .replace("carriage: 40 kg", "carriage: 11.2 kg");
        Findings findings = Demo.asLoaded(light, Units.METRIC);
        assertThat(findings.first().order().staysDown()).isFalse();
        assertThat(of(findings).alarms()).anyMatch(alarm -> alarm.startsWith("Do not load this"));
        assertThat(of(Demo.usual()).alarms()).isEmpty();
    }
}
