package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in no total is still said in the report. */
class ShownApartTest {
    @TempDir
    private Path folder;

    private String report(String exercise) throws Exception {
        Path page = folder.resolve(exercise + ".html");
        Ran ran = Ran.with("report", "../demo/dunlin.yaml", "-e", exercise, "-o", page.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.GOOD);
        return Files.readString(page);
    }

    /** The top rises at 1.875 × travel / time at most (minimum jerk), so the links take λ times its square or less. */
    @Test
    void linksThatAreRaisedAreToldApart() throws Exception {
        assertThat(report("squat-bar-chains"))
                .containsPattern("links of the chains .* takes up to [1-9][\\s\\u00A0]N more .* in no total");
    }

    @Test
    void inertiaThatReadingsDoNotShowIsSaid() throws Exception {
        assertThat(report("chest-press-machine")).contains("The inertia of chest press");
        assertThat(report("squat-bar")).doesNotContain("in no total");
    }
}
