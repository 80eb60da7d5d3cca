package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.Constants;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PublishedTest {
    private static final String SOURCE = "3rd CGPM 1901; from memory";

    @AfterAll
    static void theRowsOfThisTestAreNoEvidence() throws IOException {
        Files.deleteIfExists(ValidationLog.file("PublishedTest"));
    }

    @Test
    void writesWhatPasses() throws IOException {
        gravity(Constants.STANDARD_GRAVITY).within(0, "exact by definition");
        assertThat(Files.readAllLines(ValidationLog.file("PublishedTest")))
                .contains("Constants\tstandard gravity\tm/s²\t9.80665\t9.80665\t< 1e-9\t0\texact by definition\t"
                        + SOURCE);
    }

    @Test
    void aWrongValueFailsAndLeavesNoRow() throws IOException {
        assertThatThrownBy(() -> gravity(9.80666).source("a wrong one").within(1e-6, "none"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("9.80666");
        assertThatThrownBy(() -> gravity(9.9).source("a wrong one").withinRelative(0.005, "none"))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> gravity(Double.NaN).source("a wrong one").within(1e9, "none"))
                .isInstanceOf(AssertionError.class);
        Path file = ValidationLog.file("PublishedTest");
        if (Files.exists(file)) {
            assertThat(Files.readString(file)).doesNotContain("a wrong one");
        }
    }

    @Test
    void aSourceAndAReasonAreDemanded() {
        assertThatThrownBy(() -> gravity(9.80665).source("").within(0, "exact")).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> gravity(9.80665).within(0, " ")).isInstanceOf(AssertionError.class);
    }

    @Test
    void oneNameHasOneValue() {
        gravity(9.8066501).source("twice").within(1e-6, "six decimals");
        assertThatThrownBy(() -> gravity(9.8066503).source("twice").within(1e-6, "six decimals"))
                .isInstanceOf(IllegalStateException.class);
        gravity(9.8066501).source("twice").within(1e-6, "six decimals");
    }

    private static Published gravity(double ours) {
        return Published.of("standard gravity", "m/s²")
                .section("Constants")
                .source(SOURCE)
                .value(9.80665)
                .ours(ours);
    }

    @Test
    void printsDigitsThatARoundingErrorCannotMove() {
        assertThat(Digits.difference(70.00125, 70)).isEqualTo(Digits.difference(Math.nextUp(70.00125), 70));
        assertThat(Digits.difference(208.6531, 208.65)).isEqualTo("0.0031");
        assertThat(Digits.difference(3.7e6 + 1e-4, 3.7e6)).isEqualTo("< 1e-9");
        assertThat(Digits.difference(3.7e6 + 0.003, 3.7e6)).isEqualTo("< 1e-9 of it");
        assertThat(Digits.ours(1e-17, 0)).isEqualTo("0");
        assertThat(Digits.plain(1.25e-7)).isEqualTo("1.25e-7");
        assertThat(Digits.plain(3_700_000)).isEqualTo("3700000");
    }

    @Test
    void headingsAreWords() {
        assertThat(ValidationLog.headingOf("Anderson2007Test")).isEqualTo("Anderson 2007");
        assertThat(ValidationLog.headingOf("ContactAreaValidationTest")).isEqualTo("Contact area");
    }

    @Test
    void thePageGathersEveryModuleInNaturalOrder(@TempDir Path root) throws IOException {
        put(root, "engine", new Row("Rubber", "force at 105 %", "N", "1", "1", "< 1e-9", "0", "a|b", "s"));
        put(root, "bench", new Row("Rubber", "force at 15 %", "N", "1", "1", "< 1e-9", "0", "r", "s"));
        ValidationPage.main(new String[] {root.toString()});
        String first = Files.readString(root.resolve("docs/validation.md"));
        ValidationPage.main(new String[] {root.toString()});
        assertThat(first)
                .startsWith("# ")
                .contains("2 values in 1 section.", "\n## Rubber\n", "a\\|b")
                .containsSubsequence("force at 15 %", "force at 105 %")
                .doesNotContain(root.toString())
                .isEqualTo(Files.readString(root.resolve("docs/validation.md")));
    }

    private static void put(Path root, String module, Row row) throws IOException {
        Path folder = Files.createDirectories(root.resolve(module).resolve("target/validation"));
        Files.writeString(folder.resolve("SomeTest.tsv"), row.line() + "\n");
    }
}
