package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pages on measuring a sled and a machine quote is what the bench prints. */
class BenchHowToTest {
    @ParameterizedTest
    @CsvSource({"measure-a-sled.md, bench-sled.yaml, 7", "measure-a-machine.md, bench-machine.yaml, 6"})
    void theQuotesArePrinted(String page, String readings, int quotes) throws IOException {
        Path how = Path.of("..", "docs", "howto", page);
        Ran ran = Ran.with("bench", "../demo/" + readings);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(Files.readString(how)).contains("    ./counterpull bench demo/" + readings + "\n");
        int found = 0;
        boolean quoting = false;
        for (String line : Files.readAllLines(how)) {
            if (line.startsWith("```")) {
                quoting = !quoting;
            } else if (quoting) {
                assertThat(plain(ran.out())).as("quoted in %s", page).contains(plain(line));
                found++;
            }
        }
        assertThat(found).isEqualTo(quotes);
    }

    /** Lines and columns joined by single spaces: how wide a terminal is does not matter. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u2009\u202f]+", " ").trim();
    }
}
