package counterpull.readings.rubber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.tubing.Family;
import counterpull.bench.tubing.TubingResult;
import counterpull.bench.tubing.Wear;
import counterpull.engine.elastic.Rubber;
import counterpull.readings.ReadingsReader;
import counterpull.scenario.content.Piece;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.resist.RubberReader;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rubber of a file of readings: read into the bench, and back as a scenario's own text. */
class RubberReadingsTest {
    private static final Path DEMO = Path.of("..", "demo", "bench-rubber.yaml");

    private static List<RubberSubject> demo() throws IOException {
        return read(Files.readString(DEMO));
    }

    private static List<RubberSubject> read(String text) {
        ReadingsReader.Result result = ReadingsReader.read(Source.of("bench.yaml", text));
        assertThat(result.problems().isEmpty()).as(result.problems().toString()).isTrue();
        return result.readings().orElseThrow().subjects().stream()
                .map(RubberSubject.class::cast)
                .toList();
    }

    @Test
    void unitsBecomeSiAndEveryReadingKeepsItsPlace() throws IOException {
        RubberSubject doubled = demo().get(1);
        assertThat(doubled.name()).isEqualTo("rubber T2");
        assertThat(doubled.bench().piece().strands()).isEqualTo(2);
        assertThat(doubled.bench().pulls().stretching().get(0).force())
                .as("5.7 kgf")
                .isCloseTo(5.7 * 9.80665, within(1e-12));
        assertThat(doubled.bench().natural().readings().get(0)).isCloseTo(0.448, within(1e-15));
    }

    /** What is pasted into a scenario is the piece that the bench found, within what is printed. */
    @Test
    void theScenariosTextReadsBackAsThePiece() throws IOException {
        for (RubberSubject subject : demo().subList(0, 2)) {
            Rubber found = subject.answer().result().orElseThrow().rubber();
            Rubber back = pasted(subject.forScenario()).rubber();
            assertThat(back.naturalLength()).isCloseTo(found.naturalLength(), within(0.51e-4));
            assertThat(back.testedMaxLength()).isEqualTo(found.testedMaxLength());
            double most = found.law().tension(found.maxStretch());
            for (double along = 0.05; along < 1; along += 0.05) {
                double length = found.naturalLength() + along * (found.testedMaxLength() - found.naturalLength());
                double stretch = length / found.naturalLength();
                double again = length / back.naturalLength();
                assertThat(back.law().tension(again))
                        .as("%s at %s m", subject.name(), length)
                        .isCloseTo(found.law().tension(stretch), within(0.006 * most));
            }
        }
    }

    @Test
    void theShorteningStaysBelowAndTheUncertaintyIsSaid() throws IOException {
        RubberSubject subject = demo().get(0);
        Rubber back = pasted(subject.forScenario()).rubber();
        Rubber found = subject.answer().result().orElseThrow().rubber();
        assertThat(back.unloading().energyReturned(back.law(), back.maxStretch()))
                .isCloseTo(
                        found.unloading().energyReturned(found.law(), found.maxStretch()),
                        within(0.01 * found.law().energy(found.maxStretch())));
        assertThat(subject.forScenario())
                .contains("# under \"uncertainty\"", "- { tag: T1, force: 0.", "natural length: 1.");
    }

    private static Piece pasted(String text) {
        String kit = "rubber:\n" + text.substring(0, text.indexOf("# under \"uncertainty\""));
        Problems problems = new Problems();
        MapNode file = TreeReader.read(Source.of("kit.yaml", kit), problems).orElseThrow();
        ListNode list = (ListNode) file.get("rubber").orElseThrow();
        Fields fields = Fields.open((MapNode) list.items().get(0), Shapes.RUBBER, problems);
        Piece piece = RubberReader.read(fields).orElseThrow(() -> new AssertionError(problems.toString()));
        assertThat(problems.isEmpty()).as(problems.toString()).isTrue();
        return piece;
    }

    @Test
    void theRecordIsJudgedOnItsDay() throws IOException {
        Wear wear = demo().get(0).life().orElseThrow().wear();
        assertThat(wear.due()).isEqualTo(Wear.Due.TEST);
        assertThat(wear.reasons()).hasSize(2);
    }

    @Test
    void aRefusedPieceHasNoText() throws IOException {
        RubberSubject refused = demo().get(2);
        assertThat(refused.answer().result()).isEmpty();
        assertThat(refused.forScenario()).isEmpty();
    }

    @Test
    void withoutASizeAClosedLawStandsAsPoints() throws IOException {
        TubingResult result = demo().get(1).answer().result().orElseThrow();
        assertThat(result.chosen()).isNotEqualTo(Family.SMOOTH);
        assertThat(demo().get(1).forScenario()).contains("bench:").contains("the law stands as points of its curve");
    }

    @Test
    void everyProblemOfAFileIsSaidAtOnce() {
        String text = """
                format: counterpull-readings/1
                rubber:
                  - tag: T1
                    before: fresh
                    strands: 1.5
                    natural length: [45]
                    stretching:
                      - {length: 54 cm, force: 13 cm}
                      - {length: 60 cm}
                    record: {tested on: March}
                """;
        ReadingsReader.Result result = ReadingsReader.read(Source.of("bench.yaml", text));
        assertThat(result.readings()).isEmpty();
        assertThat(result.problems().all().stream().map(each -> each.code().text()))
                .containsExactlyInAnyOrder(
                        "not-a-number", "not-a-choice", "unit-missing", "wrong-unit", "missing-key", "not-a-text");
    }
}
