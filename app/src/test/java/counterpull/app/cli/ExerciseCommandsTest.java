package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Profile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands for exercises as a person types them. */
class ExerciseCommandsTest {
    private static final String DEMO = "../demo/";
    private static final String DUNLIN = DEMO + "dunlin.yaml";

    @TempDir
    Path folder;

    private static Ran good(String... words) {
        Ran ran = Ran.with(words);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        return ran;
    }

    private static Ran bad(String... words) {
        Ran ran = Ran.with(words);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).doesNotContain("Exception");
        return ran;
    }

    @ParameterizedTest
    @ValueSource(strings = {"exercises", "report", "compare"})
    void everyCommandExplainsItself(String command) {
        assertThat(good(command, "--help").out()).contains("Usage: counterpull " + command);
    }

    @Test
    void exercisesAreListedByNameWithWhatTheyAre() {
        List<String> lines = good("exercises").out().lines().toList();
        assertThat(lines)
                .anyMatch(line -> line.matches("knee-extension-cuff +Knee extension with an ankle cuff, seated"));
        assertThat(lines.stream().filter(line -> line.matches("[a-z0-9-]+ {2,}\\p{Lu}.*")))
                .hasSameSizeAs(Library.names());
    }

    @Test
    void oneIsPrintedAsItsFileStands() throws IOException {
        assertThat(good("exercises", "squat-bar").out())
                .isEqualTo(Files.readString(Path.of("..", "exercises", "squat-bar.yaml")));
        assertThat(bad("exercises", "squat-barr").err()).contains("squat-barr", "counterpull exercises");
    }

    @Test
    void aPersonDoesAnExerciseByNameByFileOrByOption() {
        String byOption = good("profile", DUNLIN, "-e", "knee-extension-cuff").out();
        assertThat(good("profile", "knee-extension-cuff", DUNLIN).out()).isEqualTo(byOption);
        assertThat(good("profile", DUNLIN, "-e", "../exercises/knee-extension-cuff.yaml")
                        .out())
                .isEqualTo(byOption);
        assertThat(byOption)
                .startsWith("Dunlin: Knee extension with an ankle cuff, seated, knee flexion from 90° to 10°")
                .contains("left, lifting, from the bottom (first line) to the top", "Hardest: left knee extension");
    }

    @Test
    void theTablesHeadlineIsTheProfiles() {
        Profile profile = LibraryExercises.profile(LibraryExercises.scenario("knee-extension-cuff"));
        double effort = profile.effort(Joint.KNEE, Phase.LIFTING, profile.positions() - 1);
        assertThat(good("profile", DUNLIN, "-e", "knee-extension-cuff").out().replace('\u00a0', ' '))
                .contains("lifting, at knee flexion 10°: " + Math.round(100 * effort) + " %");
    }

    @Test
    void csvDictionaryAndJsonHoldTheSameColumns() throws IOException {
        String csv = good("profile", DUNLIN, "-e", "squat-bar", "-f", "csv").out();
        String dictionary =
                good("profile", DUNLIN, "-e", "squat-bar", "-f", "dictionary").out();
        JsonNode json = new ObjectMapper()
                .readTree(
                        good("profile", DUNLIN, "-e", "squat-bar", "-f", "json").out());
        int columns = csv.lines().findFirst().orElseThrow().split(",").length;
        assertThat(dictionary.lines().count()).isEqualTo(columns + 1L);
        assertThat(json.get("columns")).hasSize(columns);
        // 101 positions × 3 phases × 2 limbs, and a header
        assertThat(csv.lines().count()).isEqualTo(101 * 3 * 2 + 1);
        assertThat(json.get("rows")).hasSize(101 * 3 * 2);
    }

    @Test
    void detailIsAddedPieceByPiece() {
        String small = good("profile", DUNLIN, "-e", "squat-bar").out();
        assertThat(small).doesNotContain("left, lowering", "made of").contains("More: ");
        String side =
                good("profile", DUNLIN, "-e", "squat-bar", "--side", "left").out();
        assertThat(side).contains("left, lowering", "left, held").doesNotContain("right, lowering", "made of");
        String phase = good("profile", DUNLIN, "-e", "squat-bar", "--phase", "lowering")
                .out();
        assertThat(phase).contains("left, lowering", "right, lowering").doesNotContain("left, held");
        String parts = good("profile", DUNLIN, "-e", "squat-bar", "--parts", "--side", "right", "--phase", "held")
                .out();
        assertThat(parts).contains("right, held: what each torque is made of").doesNotContain("left, held");
        String all = good("profile", DUNLIN, "-e", "squat-bar", "--all").out();
        assertThat(all).contains("left, held: what each", "right, lowering: what each");
    }

    @Test
    void aLimbThatTakesNoPartIsRefused() {
        assertThat(bad("profile", DUNLIN, "-e", "knee-extension-cuff", "--side", "right")
                        .err())
                .contains("--side", "right");
    }

    @Test
    void anUnknownExerciseSaysWhereTheNamesAre() {
        assertThat(bad("profile", DUNLIN, "-e", "cartwheel").err()).contains("cartwheel", "counterpull exercises");
    }

    @Test
    void whatIsForAPressAloneSaysSo() {
        assertThat(bad("choose", DUNLIN, "-e", "squat-bar").err()).contains("of a rail press");
    }

    @Test
    void aReportIsWrittenOfAnyScenario() throws IOException {
        Path file = folder.resolve("cuff.html");
        assertThat(good("report", DUNLIN, "-e", "knee-extension-cuff", "-o", file.toString())
                        .out())
                .contains("Report written to " + file);
        assertThat(Files.readString(file)).contains("Dunlin: Knee extension with an ankle cuff, seated");
        Path press = folder.resolve("press.html");
        good("report", DEMO + "plover.yaml", DEMO + "room.yaml", "-o", press.toString());
        assertThat(Files.readString(press)).contains("Plover on harbour sled");
        assertThat(bad(
                                "report",
                                DUNLIN,
                                "-e",
                                "squat-bar",
                                "-o",
                                folder.resolve("no/x.html").toString())
                        .err())
                .contains("x.html");
    }

    @Test
    void aPressStandsBesideAKneeExtensionOfTheSamePerson() throws IOException {
        Path page = folder.resolve("both.html");
        String[] files = {DEMO + "plover.yaml", DEMO + "room.yaml"};
        String out = good(
                        "compare",
                        files[0],
                        files[1],
                        "-w",
                        "files",
                        "-w",
                        "knee-extension-cuff",
                        "-i",
                        page.toString())
                .out();
        assertThat(out)
                .contains("Press on harbour sled", "Knee extension with an ankle cuff, seated")
                .contains("most at the bottom", "most at the top", "Page written to " + page);
        assertThat(Files.readString(page))
                .contains("Equal at knee flexion ", "above that angle “Press on harbour sled” asks more");
    }

    @ParameterizedTest
    @CsvSource({
        "plover,knee-extension-lever",
        "heron,knee-extension-stack",
        "crane,squat-bar",
        "heron,hip-abduction-cable"
    })
    void theDemosPeopleDoSeveralExercisesInTheirOwnRanges(String person, String exercise) {
        assertThat(good("profile", DEMO + person + ".yaml", "-e", exercise).out())
                .contains("Hardest: ");
    }

    @Test
    void sideBySideTakesTwoToFour() {
        assertThat(bad("compare", DUNLIN, "-w", "squat-bar").err()).contains("two to four", "not 1");
        assertThat(bad("compare", DUNLIN, "-w", "a", "-w", "b", "-w", "c", "-w", "d", "-w", "e")
                        .err())
                .contains("not 5");
        assertThat(bad("compare", DUNLIN, "-w", "squat-bar", "-w", "cartwheel").err())
                .contains("cartwheel");
    }

    @ParameterizedTest
    @CsvSource({
        "torque,left knee extension torque",
        "effort,effort of the left knee",
        "angle,left knee flexion",
        "kneecap,left kneecap joint stress",
        "pull,pull of ankle cuff"
    })
    void everyNumberOfAnExerciseAnswersWhy(String number, String title) {
        Ran ran = good(
                "why", DUNLIN, "-e", "knee-extension-cuff", "--of", number, "--phase", "lifting", "--at", "30 deg");
        assertThat(ran.out())
                .startsWith(title)
                .contains("lifting, at knee flexion 30", "Source")
                .doesNotContain("NaN");
    }

    @Test
    void whyAsksByTravelWhereAPathCounts() {
        assertThat(good("why", DUNLIN, "-e", "bench-press-bar", "--joint", "elbow", "--at", "10 cm")
                        .out())
                .contains("at travel 10");
        assertThat(bad("why", DUNLIN, "-e", "bench-press-bar", "--at", "30 deg").err())
                .contains("--at");
        assertThat(bad("why", DUNLIN, "-e", "bench-press-bar", "--at", "2 m").err())
                .contains("--at", "outside this range");
    }

    @ParameterizedTest
    @CsvSource({
        "push,torque",
        "arm,torque",
        "rubber,torque",
    })
    void whatOnlyAPressHasIsRefusedWithWhatThereIs(String number, String instead) {
        assertThat(bad("why", DUNLIN, "-e", "knee-extension-cuff", "--of", number)
                        .err())
                .contains("--of " + number, "only a press on a sled", instead);
    }

    @Test
    void aJointOrAPullThatIsNotThereIsRefused() {
        assertThat(bad("why", DUNLIN, "-e", "knee-extension-cuff", "--joint", "elbow")
                        .err())
                .contains("--joint: the elbow is not computed in this exercise; there is knee, ankle");
        assertThat(bad("why", DUNLIN, "-e", "elbow-flexion-dumbbell", "--of", "kneecap")
                        .err())
                .contains("the knee is not computed");
        assertThat(bad("why", DUNLIN, "-e", "knee-extension-cuff", "--of", "pull", "--line", "9")
                        .err())
                .contains("--line", "no pull 9");
        assertThat(bad("why", DUNLIN, "-e", "knee-extension-cuff", "--at", "120 deg")
                        .err())
                .contains("outside this range", "90.0°", "10.0°");
    }
}
