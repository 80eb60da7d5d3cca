package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every command of a page is run, and prints or writes what the page says under it. */
class HowToCommandsTest {
    private static final Path PAGES = Path.of("..", "docs", "howto");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|\\S+");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "choose-an-exercise.md, 7, 8",
        "how-sure-is-it.md, 3, 9",
        "measure-a-person.md, 2, 11",
        "measure-rubber.md, 1, 11"
    })
    void everyCommandDoesWhatThePageSays(String page, int howMany, int lines) throws IOException {
        int commands = 0;
        int quotes = 0;
        String said = "";
        boolean quoting = false;
        for (String line : Files.readAllLines(PAGES.resolve(page))) {
            if (line.startsWith("    ./counterpull ")) {
                said = run(line.substring("    ./counterpull ".length()));
                commands++;
            } else if (line.startsWith("```")) {
                quoting = !quoting;
            } else if (quoting) {
                assertThat(said).as("what the page says under a command").contains(plain(line));
                quotes++;
            }
        }
        assertThat(commands).isEqualTo(howMany);
        assertThat(quotes).isEqualTo(lines);
    }

    private String run(String command) throws IOException {
        Path written = folder.resolve("page.html");
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            String text = word.group(1) == null ? word.group() : word.group(1);
            boolean page = text.endsWith(".html");
            words.add(page ? written.toString() : text.startsWith("demo/") ? "../" + text : text);
        }
        Ran ran = Ran.with(words.toArray(new String[0]));
        assertThat(ran.err()).as(command).isEmpty();
        assertThat(ran.code()).as(command).isEqualTo(Exit.GOOD);
        String page = Files.exists(written) ? Files.readString(written) : "";
        Files.deleteIfExists(written);
        return plain(ran.out() + page);
    }

    /** Lines and columns joined by single spaces of the plain kind: how wide a terminal is does not matter. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u2009]+", " ").trim();
    }
}
