package counterpull.readings.table;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.readings.ReadingsReader;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo's files of readings go out to tables and come back: nothing is left out, and the bench reads what comes back. */
class KindsTest {
    static List<Path> files() throws IOException {
        try (Stream<Path> demo = Files.list(Path.of("..", "demo"))) {
            return demo.filter(KindsTest::ofReadings).sorted().toList();
        }
    }

    private static boolean ofReadings(Path file) {
        try {
            return file.toString().endsWith(".yaml")
                    && Files.readString(file).contains("\nformat: " + ReadingsReader.FORMAT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyReadingOfTheDemoIsInATableAndComesBack(Path file) throws IOException {
        MapNode tree = tree(Files.readString(file));
        List<Set<String>> leftOut = new ArrayList<>();
        for (ReadingsTable table : TableKinds.ofReadings()) {
            ReadingsRows rows = ReadingsRows.of(tree, table);
            if (!rows.rows().isEmpty()) {
                leftOut.add(new HashSet<>(rows.leftOut()));
                comesBack(table, rows.rows());
            }
        }
        Set<String> nowhere = new HashSet<>(leftOut.get(0));
        leftOut.forEach(nowhere::retainAll);
        assertThat(nowhere).isEmpty();
    }

    private static void comesBack(ReadingsTable table, List<Map<String, String>> rows) {
        String csv = TableText.csv(table, rows);
        Problems problems = new Problems();
        Sheet sheet = SheetReader.read(Source.of("a.csv", csv), problems).orElseThrow();
        Proposal proposal = Proposal.of(sheet, table);
        assertThat(proposal.questions()).as(csv).isEmpty();
        Conversion conversion = Conversion.of(proposal.grid(), proposal.mapping());
        assertThat(conversion.refused()).as(csv).isEmpty();
        String yaml = ReadingsText.yaml("a.csv", table, conversion);
        assertThat(ReadingsRows.of(tree(yaml), table).rows()).as(yaml).containsExactlyInAnyOrderElementsOf(rows);
        assertThat(ReadingsReader.read(Source.of("a.yaml", yaml)).problems().lines())
                .as(yaml)
                .isEmpty();
    }

    private static MapNode tree(String yaml) {
        Problems problems = new Problems();
        return TreeReader.read(Source.of("a.yaml", yaml), problems)
                .orElseThrow(() -> new AssertionError(problems.lines()));
    }
}
