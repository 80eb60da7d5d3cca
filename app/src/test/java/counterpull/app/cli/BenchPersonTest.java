package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person's readings and repetitions at the terminal, and back into a scenario. */
class BenchPersonTest {
    private static final String DEMO = "../demo/bench-person.yaml";
    private static final String PLOVER = "../demo/plover.yaml";
    private static final String ROOM = "../demo/room.yaml";

    @TempDir
    Path folder;

    @Test
    void thePageHasACurveForEachActionAndTheLinesForAScenario() throws IOException {
        Ran ran = Ran.with("bench", DEMO, "--into", folder.toString());
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        String page = Files.readString(folder.resolve("bench.html"));
        assertThat(page)
                .contains("Knee extension: left beside right", "Hip extension: left beside right", "published average")
                .contains("For a scenario file", "ended: pain")
                .doesNotContain("NaN");
        assertThat(page.split("<svg ", -1)).as("two charts").hasSize(3);
        assertThat(Files.readString(folder.resolve("for-a-scenario.yaml"))).startsWith("# Wren");
    }

    @Test
    void aReadingThatCannotBeIsLeftOutByName() throws IOException {
        Path bad = folder.resolve("bad.yaml");
        Files.writeString(bad, Files.readString(Path.of(DEMO)).replaceFirst("\\{force: 279 N\\}", "{force: 2790 N}"));
        Ran ran = Ran.with("bench", bad.toString());
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Look at this first: Left out: effort 2 of knee extension left is 2790")
                .contains("check its decimal point");
    }

    @Test
    void theLinesOfRepetitionsGoIntoAScenario() throws IOException {
        Ran ran = Ran.with("bench", "repetitions", PLOVER, ROOM, "--done", "9", "--left", "2");
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        List<String> lines = ran.out()
                .lines()
                .map(String::strip)
                .filter(line -> line.startsWith("- {action: knee extension"))
                .toList();
        assertThat(lines).as("a test of the left, a floor of the right").hasSize(2);
        Path pasted = folder.resolve("plover.yaml");
        String plover = Files.readString(Path.of(PLOVER));
        Files.writeString(pasted, plover.replaceFirst("( +)tests:\n", "$1tests:\n$1  " + lines.get(0) + "\n"));
        Ran profile = Ran.with("profile", pasted.toString(), ROOM);
        assertThat(profile.err()).isEmpty();
        assertThat(profile.code()).isEqualTo(Exit.GOOD);
    }

    @Test
    void aSetThatPainEndedGivesFloorsAlone() {
        Ran ran = Ran.with("bench", "repetitions", PLOVER, ROOM, "--done", "9", "--pain");
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("or less", "ended: pain").doesNotContain("a test\n");
    }

    @Test
    void aSetThatSaysNothingIsRefusedInWords() {
        assertThat(Ran.with("bench", "repetitions", PLOVER, ROOM, "--done", "9", "--left", "12"))
                .satisfies(ran -> assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT))
                .satisfies(ran -> assertThat(ran.out()).contains("Repetitions left: 12"));
        assertThat(Ran.with("bench", "repetitions", PLOVER, ROOM, "--done", "9").code())
                .isNotEqualTo(Exit.GOOD);
        assertThat(Ran.with("bench", "repetitions", PLOVER, ROOM, "--done", "9", "--left", "1", "--failed")
                        .code())
                .isNotEqualTo(Exit.GOOD);
    }
}
