package counterpull.report.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.readings.ReadingsReader;
import counterpull.report.Heading;
import counterpull.report.table.UnitSet;
import counterpull.scenario.tree.Source;
import counterpull.scenario.units.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sleds and machines on the bench's page and in its text. */
class MachinesOnTheBenchTest {
    private static List<BenchSection> sections(Source source, Units units) {
        ReadingsReader.Result result = ReadingsReader.read(source);
        return BenchSections.of(
                result.readings()
                        .orElseThrow(() -> new AssertionError(result.problems().lines())),
                units);
    }

    private static List<BenchSection> demo(String name, Units units) {
        return sections(Source.of(Path.of("..", "demo", name)), units);
    }

    @Test
    void aSledHasItsChartsTablesAndLines() {
        BenchSection sled = demo("bench-sled.yaml", Units.METRIC).get(0);
        assertThat(sled.headline()).contains("kg").contains("°");
        assertThat(sled.charts()).hasSize(3);
        assertThat(sled.tables()).hasSize(2);
        assertThat(sled.tables().get(1).rows()).as("every pull is shown").isEqualTo(18);
        assertThat(sled.forScenario()).contains("carriage:").contains("uncertainty:");
    }

    @Test
    void everyKindOfMachineHasWordsChartsAndLines() {
        List<BenchSection> machines = demo("bench-machine.yaml", Units.METRIC);
        assertThat(machines).hasSize(4).allSatisfy(section -> {
            assertThat(section.headline()).isNotEmpty().doesNotEndWith(".");
            assertThat(section.charts()).isNotEmpty();
            assertThat(section.tables()).isNotEmpty();
            assertThat(section.forScenario()).contains("resists:");
        });
    }

    @Test
    void aReaderOfPoundsReadsNoKilograms() {
        String text = BenchText.of(demo("bench-sled.yaml", Units.IMPERIAL), UnitSet.IMPERIAL, 100);
        assertThat(text.substring(0, text.indexOf("For a scenario file")))
                .contains("lb")
                .doesNotContain("kg");
    }

    @Test
    void thePageDrawsEveryChart() {
        Heading heading = new Heading("bench-machine.yaml", "", "", LocalDate.of(2026, 11, 25), "test");
        String page = BenchPage.html(demo("bench-machine.yaml", Units.METRIC), heading, Units.METRIC);
        assertThat(page.split("<svg", -1)).as("7 charts").hasSizeGreaterThanOrEqualTo(8);
        assertThat(page).contains("What each pin is off by").doesNotContain("NaN");
    }

    @Test
    void aRefusedSledSaysWhyAndNothingElse() {
        BenchSection section =
                sections(Source.of("bad.yaml", """
                        format: counterpull-readings/1
                        sleds:
                          - name: sled
                            rail angle: [{laid: 45 deg, turned: 45.2 deg}]
                            scale sure to: 2 N
                            pulls: [{plates: 0 kg, up: [260 N, 262 N, 261 N], down: [300 N, 302 N, 299 N]}]
                        """), Units.METRIC).get(0);
        assertThat(section.headline()).isEmpty();
        assertThat(section.forScenario()).isEmpty();
        assertThat(section.remarks())
                .anySatisfy(remark -> assertThat(new BenchWords(Units.METRIC).say(remark))
                        .contains("Pull 5 (down)")
                        .contains("302")
                        .contains("exchanged"));
    }
}
