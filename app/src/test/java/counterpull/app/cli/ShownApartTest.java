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

    /** 32° of ankle at 0.4 per degree of knee are used up at 80°, inside a range from 90° to 10°. */
    @Test
    void aShinThatStopsInsideTheRangeIsSaid() throws Exception {
        assertThat(report("split-squat-dumbbells")).doesNotContain("The ankle gives no further");
        Path deeper = folder.resolve("deeper.yaml");
        String stated = Files.readString(Path.of("..", "exercises", "split-squat-dumbbells.yaml"));
        Files.writeString(deeper, stated.replace("ankle per knee: 0.35", "ankle per knee: 0.4"));
        Path page = folder.resolve("deeper.html");
        Ran ran = Ran.with("report", "../demo/dunlin.yaml", "-e", deeper.toString(), "-o", page.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.GOOD);
        assertThat(Files.readString(page)).contains("The ankle gives no further from knee flexion 80.0");
    }
}
