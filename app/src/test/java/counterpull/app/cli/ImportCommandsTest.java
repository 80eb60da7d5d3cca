package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.readings.ReadingsReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables in, tables out, at the terminal. */
class ImportCommandsTest {
    private static final String DEMO = "../demo/";

    @TempDir
    Path folder;

    @Test
    void noDigitChangesAndNothingIsLost() throws IOException {
        Path readings = folder.resolve("t7.yaml");
        Ran ran = Ran.with(
                "bench",
                "import",
                DEMO + "pulls.csv",
                "--mapping",
                DEMO + "pulls-mapping.yaml",
                "-o",
                readings.toString());
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.err()).contains("pulls.csv: 13 rows written, 1 refused and kept as comments at the end.");
        String yaml = Files.readString(readings);
        for (String line : Files.readAllLines(Path.of(DEMO, "pulls.csv")).subList(2, 16)) {
            String[] cells = line.split(";");
            assertThat(yaml)
                    .contains(cells[0])
                    .contains(cells[1].contains("so") ? cells[1] : cells[1].replace(',', '.'));
        }
        assertThat(yaml).contains("hook slipped", "scale swung", "invented");
        assertThat(ReadingsReader.read(Source.of("t7.yaml", yaml)).problems().lines())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"person-tests", "person-ranges", "person-lengths", "person-girths"})
    void whatIsExportedIsImportedAgain(String kind) throws IOException {
        Path tables = folder.resolve("tables");
        assertThat(Ran.with("bench", "export", DEMO + "bench-person.yaml", "--into", tables.toString())
                        .code())
                .isEqualTo(Exit.GOOD);
        String table = tables.resolve(kind + ".csv").toString();
        Path mapping = folder.resolve("mapping.yaml");
        Ran preview = Ran.with("bench", "import", table, "--as", kind, "--write-mapping", mapping.toString());
        assertThat(preview.out()).doesNotContain("Questions", "Refused");
        assertThat(preview.code()).isEqualTo(Exit.GOOD);
        Files.writeString(mapping, Files.readString(mapping).replace("confirmed: no", "confirmed: yes"));
        Path readings = folder.resolve("back.yaml");
        assertThat(Ran.with("bench", "import", table, "--mapping", mapping.toString(), "-o", readings.toString())
                        .code())
                .isEqualTo(Exit.GOOD);
        Path again = folder.resolve("again");
        Ran.with("bench", "export", readings.toString(), "--into", again.toString());
        assertThat(again.resolve(kind + ".csv")).hasSameTextualContentAs(tables.resolve(kind + ".csv"));
    }

    @Test
    void nothingThatIsExportedRunsAsAFormula() throws IOException {
        Path readings = Files.writeString(folder.resolve("r.yaml"), """
                format: counterpull-readings/1
                rubber:
                  - tag: "=HYPERLINK(0)"
                    natural length: [45 cm]
                    stretching:
                      - {length: 54 cm, force: 14 N}
                      - {length: 63 cm, force: 22 N}
                """);
        assertThat(Ran.with("bench", "export", readings.toString(), "--into", folder.toString())
                        .code())
                .isEqualTo(Exit.GOOD);
        assertThat(Files.readAllLines(folder.resolve("rubber.csv")))
                .hasSize(4)
                .filteredOn(line -> line.matches("[=+@-].*"))
                .isEmpty();
        assertThat(Files.readString(folder.resolve("rubber.csv"))).contains("'=HYPERLINK(0)");
    }

    /** Rates of rise, onset and rest of the same file as a second program (in another language, sample by sample) computed them. */
    @Test
    void aTraceSaysWhatASecondComputationSays() {
        Ran ran = Ran.with("bench", "import", DEMO + "knee-trace.csv", "--mapping", DEMO + "knee-trace-mapping.yaml");
        assertThat(ran.out().replaceAll("[ \u2009]+", " "))
                .contains(
                        "27.9 N (standard deviation 0.589 N, 251 samples)",
                        " 1 2.13 204 199 4.09 0.9\n",
                        " 2 9.42 218 213 9.96 1.0\n",
                        " 1 1228 992 825 712 ",
                        " 2 1387 1136 957 788 ",
                        "efforts: [{force: 199.3 N}, {force: 213 N}]");
    }

    @Test
    void aTraceIsDrawnAndGivesItsLines() throws IOException {
        Ran ran = Ran.with(
                "bench",
                "import",
                DEMO + "knee-trace.csv",
                "--mapping",
                DEMO + "knee-trace-mapping.yaml",
                "--take",
                "peak",
                "--into",
                folder.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(Files.readString(folder.resolve("for-a-test.yaml")))
                .isEqualTo("efforts: [{force: 203.9 N}, {force: 217.5 N}]   # each its peak\n"
                        + "resting: 27.91 N   # the relaxed limb on the device, before the first effort\n");
        String page = Files.readString(folder.resolve("trace.html"));
        assertThat(page).contains(">onset<", ">peak<", ">effort 1<", ">effort 2<", "time, s");
        assertThat(page.split("<svg")).hasSize(3);
        assertThat(page).doesNotContain("<script", "src=\"http", "href=\"http");
    }
}
