package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command of the page on bringing readings in is run, and prints what the page says under it. */
class ImportHowToTest {
    private static final Path PAGE = Path.of("..", "docs", "howto", "import-readings.md");

    @TempDir
    Path folder;

    @Test
    void everyCommandDoesWhatThePageSays() throws IOException {
        int commands = 0;
        int quotes = 0;
        String said = "";
        String quoting = "";
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("    ./counterpull ")) {
                said = run(line.substring("    ./counterpull ".length()));
                commands++;
            } else if (line.startsWith("```")) {
                quoting = line.substring(3);
            } else if (quoting.equals("text")) {
                assertThat(said).as("what the page says under a command").contains(plain(line));
                quotes++;
            }
        }
        assertThat(commands).isEqualTo(4);
        assertThat(quotes).isEqualTo(14);
    }

    /** The mapping on the page is the one beside the demo, which differs by its comment alone. */
    @Test
    void theMappingOnThePageIsTheDemos() throws IOException {
        String page = Files.readString(PAGE);
        String quoted =
                page.substring(page.indexOf("```yaml\n") + 8, page.indexOf("```\n", page.indexOf("```yaml\n") + 8));
        String demo =
                Files.readString(Path.of("..", "demo", "pulls-mapping.yaml")).replaceAll("(?m)^#.*\n", "");
        assertThat(quoted).isEqualTo(demo);
    }

    private String run(String command) {
        List<String> words = new ArrayList<>();
        for (String word : command.split(" ")) {
            boolean written = word.equals("mapping.yaml") || word.equals("tables");
            words.add(written ? folder.resolve(word).toString() : word.startsWith("demo/") ? "../" + word : word);
        }
        Ran ran = Ran.with(words.toArray(new String[0]));
        // a preview that still asks something ends with 2
        assertThat(ran.code()).as(command).isEqualTo(command.contains("--as") ? Exit.BAD_INPUT : Exit.GOOD);
        return plain(ran.out());
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u2009]+", " ").trim();
    }
}
