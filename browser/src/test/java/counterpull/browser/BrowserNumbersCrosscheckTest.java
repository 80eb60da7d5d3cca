package counterpull.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The engine as JavaScript gives the numbers that it gives on the JVM. The script runs under Node.js where that is installed;
 * where it is not, this check says that it did not run.
 *
 * <p>Tolerance: sine, cosine and arc cosine may differ in the last digit between the two; some hundred operations and the
 * division by the sine of a knee nearly straight leave 1e-12. 1e-9 is what the design promises.
 */
class BrowserNumbersCrosscheckTest {
    private static final Path SCRIPT = Path.of("target", "javascript", "worked-example.js");
    private static final double CLOSE = 1e-9;
    private static final String LAST_LINE = "require(process.argv[1]).main([])";

    @BeforeAll
    static void nodeIsThere() {
        boolean there = runs("node", "--version");
        if (!there) {
            System.out.println(
                    "NOT RUN: Node.js is not installed, so the engine's JavaScript was compiled but not run.");
        }
        assumeTrue(there, "NOT RUN: Node.js is not installed, so the engine's JavaScript was compiled but not run");
    }

    private static boolean runs(String... command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor() == 0;
        } catch (IOException missing) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<String> inJavaScript() throws IOException, InterruptedException {
        Path out = Files.createTempFile("numbers", ".txt");
        Process process = new ProcessBuilder(
                        "node", "-e", LAST_LINE, SCRIPT.toAbsolutePath().toString())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).as("the script ends").isTrue();
        List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
        Files.delete(out);
        assertThat(process.exitValue()).as("%s", lines).isZero();
        return lines;
    }

    @Test
    void everyNumberAgrees() throws IOException, InterruptedException {
        System.out.println("JavaScript of the engine's profile: " + Files.size(SCRIPT) + " bytes");
        List<String> ours = WorkedExample.lines();
        List<String> theirs = inJavaScript();
        assertThat(theirs).hasSameSizeAs(ours);
        for (int i = 0; i < ours.size(); i++) {
            compare(ours.get(i), theirs.get(i));
        }
    }

    /** A control: a difference in the eighth digit does not pass, a missing value neither. */
    @Test
    void aDifferenceIsSeen() {
        assertThatThrownBy(() -> compare("knee torque\t84.607134", "knee torque\t84.607135"))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> compare("hip effort\t0.5", "hip effort\tNaN")).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> compare("hip effort\tNaN", "hip effort\t0.5")).isInstanceOf(AssertionError.class);
    }

    private static void compare(String ours, String theirs) {
        String[] left = ours.split("\t");
        String[] right = theirs.split("\t");
        assertThat(right[0]).isEqualTo(left[0]);
        double expected = Double.parseDouble(left[1]);
        double found = Double.parseDouble(right[1]);
        if (Double.isNaN(expected)) {
            assertThat(found).as(left[0]).isNaN();
        } else {
            assertThat(found).as(left[0]).isCloseTo(expected, within(CLOSE * Math.max(1, Math.abs(expected))));
        }
    }
}
