package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The how-to about exercises says what the program says. */
class ExerciseHowToTest {
    private static final Path PAGE = Path.of("..", "docs", "howto", "add-an-exercise.md");

    private static String fenced(String page, String language) {
        Matcher block =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(page);
        assertThat(block.find()).as(language).isTrue();
        return block.group(1);
    }

    /** regression: the page's example against the page's result. */
    @Test
    void theExampleGivesThePrintedResult(@TempDir Path folder) throws IOException {
        String page = Files.readString(PAGE);
        Path exercise = Files.writeString(folder.resolve("my-exercise.yaml"), fenced(page, "yaml"));
        Ran ran = Ran.with("profile", exercise.toString(), "../demo/dunlin.yaml");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).startsWith(fenced(page, "text"));
    }
}
