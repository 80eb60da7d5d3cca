package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands as a person types them. */
class CommandLineTest {
    private static final String DEMO = "../demo/";

    @TempDir
    Path folder;

    @Test
    void withoutACommandItShowsWhatThereIs() {
        Ran ran = Ran.with();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("demo", "choose", "profile", "why", "card", "read", "format", "Start here");
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo", "read", "profile", "choose", "card", "why", "format", "completion"})
    void everyCommandExplainsItself(String command) {
        Ran ran = Ran.with(command, "--help");
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("Usage: counterpull " + command);
    }

    @Test
    void theExampleThatItPrintsIsAGoodScenario() throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, Ran.with("format").out());
        assertThat(Ran.with("read", file.toString()).code()).isEqualTo(Exit.GOOD);
    }

    @Test
    void aPersonAndARoomReadAsOne() {
        Ran ran = Ran.with("read", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("Plover");
    }

    @Test
    void everyProblemOfABadFileIsSaidAndTheCodeIsTwo() throws IOException {
        String good = Ran.with("format").out();
        Path file = folder.resolve("bad.yaml");
        Files.writeString(
                file, good.replace("stature: 5 ft 9 in", "stature: 175").replace("mass: 68 kg", "mas: 68 kg"));
        Ran ran = Ran.with("profile", file.toString());
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err())
                .contains("stature")
                .contains("175")
                .contains("mas")
                .contains("mass");
        assertThat(ran.err()).doesNotContain("Exception");
    }

    @Test
    void aFileThatIsNotThereIsBadInput() {
        Ran ran = Ran.with("profile", folder.resolve("nowhere.yaml").toString());
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("nowhere.yaml");
    }

    @Test
    void anUnknownOptionIsBadInputWithASuggestion() {
        Ran ran = Ran.with("profile", "--unit", "metric", DEMO + "plover.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("--units");
    }

    @Test
    void aProfileComesAsTableCsvAndJson() {
        String[] files = {DEMO + "plover.yaml", DEMO + "room.yaml"};
        assertThat(Ran.with("profile", files[0], files[1]).out())
                .contains("knee")
                .contains("N");
        String csv = Ran.with("profile", "-f", "csv", files[0], files[1]).out();
        // 101 positions × 3 phases × 2 limbs and a header
        assertThat(csv.lines().count()).isEqualTo(101 * 3 * 2 + 1);
        assertThat(Ran.with("profile", "-f", "json", files[0], files[1]).out()).startsWith("{");
        assertThat(Ran.with("profile", "-f", "dictionary", files[0], files[1])
                        .out()
                        .lines()
                        .count())
                .isEqualTo(csv.lines().findFirst().orElseThrow().split(",").length + 1L);
    }

    @Test
    void unitsAreChosenWithOneOption() {
        String[] files = {DEMO + "plover.yaml", DEMO + "room.yaml"};
        assertThat(Ran.with("profile", "-u", "imperial", files[0], files[1]).out())
                .contains("lbf")
                .doesNotContain(" cm");
    }

    @Test
    void whySumsToItsNumber() {
        Ran ran = Ran.with(
                "why",
                "--joint",
                "knee",
                "--side",
                "left",
                "--phase",
                "lifting",
                "--knee",
                "60 deg",
                DEMO + "plover.yaml",
                DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out())
                .contains("left knee extension torque, lifting")
                .contains("sum")
                .contains("Source");
    }

    @ParameterizedTest
    @ValueSource(strings = {"push", "torque", "effort", "angle", "arm", "kneecap", "rubber"})
    void everyNumberAnswersWhy(String number) {
        Ran ran = Ran.with("why", "--of", number, DEMO + "crane.yaml", DEMO + "room.yaml");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("Source: ").doesNotContain("NaN");
    }

    @Test
    void whyRefusesAnAngleWithoutAUnit() {
        Ran ran = Ran.with("why", "--knee", "60", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("--at").contains("75 deg");
    }

    @Test
    void choosingWritesEverythingIntoAFolder() throws IOException {
        Path into = folder.resolve("out");
        Ran ran = Ran.with(
                "choose",
                "--strategy",
                "load_alone,relieve_low",
                "--into",
                into.toString(),
                DEMO + "plover.yaml",
                DEMO + "room.yaml");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("CHOSEN").contains("load alone");
        for (String name : new String[] {"report.html", "card.pdf", "profile.csv", "columns.csv", "result.json"}) {
            assertThat(Files.size(into.resolve(name))).as(name).isGreaterThan(500);
        }
    }

    @Test
    void nothingFeasibleIsAnAnswerWithTheLimitAndByHowMuch() throws IOException {
        String tight = Files.readString(Path.of(DEMO + "plover.yaml"))
                .replaceFirst("(?m)^  kneecap stress: .*$", "  kneecap stress: 0.01 MPa");
        Path file = folder.resolve("tight.yaml");
        Files.writeString(file, tight);
        Ran ran = Ran.with("choose", file.toString(), DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.NOTHING_FEASIBLE);
        assertThat(ran.out())
                .contains("NOTHING FEASIBLE")
                .contains("kneecap joint stress limit")
                .contains("0.01")
                .contains("Nearest:");
    }

    @Test
    void aCardOfTodaysSetup() throws IOException {
        Path card = folder.resolve("today.pdf");
        Ran ran = Ran.with("card", "-o", card.toString(), DEMO + "heron.yaml", DEMO + "room.yaml");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(new String(Files.readAllBytes(card), 0, 5)).isEqualTo("%PDF-");
    }

    @Test
    void completionIsAScript() {
        assertThat(Ran.with("completion").out()).contains("complete -F").contains("counterpull");
    }

    @Test
    void aProfileIsOneSmallTableAndItsSentencesUntilMoreIsAskedFor() {
        String[] files = {DEMO + "plover.yaml", DEMO + "room.yaml"};
        String small = Ran.with("profile", files[0], files[1]).out();
        assertThat(small)
                .contains("20 kg + 5 kg each side", "Hardest: ", "goes past the kneecap")
                .doesNotContain("left leg, lifting");
        // nine positions and a screen of sentences
        assertThat(small.lines().count()).isLessThan(50);
        String one = Ran.with("profile", "--side", "left", "--phase", "lifting", files[0], files[1])
                .out();
        assertThat(one).startsWith(small.substring(0, small.indexOf("More: "))).contains("left leg, lifting: ");
        assertThat(one).doesNotContain("right leg, ").doesNotContain("left leg, held");
        String all = Ran.with("profile", "--all", files[0], files[1]).out();
        assertThat(all).contains("left leg, lifting: ", "right leg, held: ", "right leg, lowering: ");
    }

    @Test
    void aLimbThatDoesNotPushIsRefused() throws IOException {
        Path file = folder.resolve("one.yaml");
        Files.writeString(
                file,
                Ran.with("format").out().replace("limbs: both ", "limbs: left ").replace("  left share: 50 %", "  #"));
        Ran ran = Ran.with("profile", "--side", "right", file.toString());
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("--side", "right");
    }

    @ParameterizedTest
    @CsvSource({
        "--phase,sideways,'held, lifting, lowering'",
        "--side,middle,'left, right'",
        "--units,furlong,'metric, imperial'",
        "--positions,many,'not a whole number'",
        "--positions,1,'from 2 to 101'",
        "--output,nowhere/x,'does not exist'"
    })
    void aWrongValueIsSaidInALineOrTwoWithWhatIsRight(String option, String value, String said) {
        Ran ran = Ran.with("profile", option, value, DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(option, said);
        assertThat(ran.err().lines().count()).isLessThanOrEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 s", "-3 s", "3", "soon"})
    void aSearchNeedsATimeAboveNothing(String time) {
        Ran ran = Ran.with("choose", "--within", time, DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("--within");
    }

    @Test
    void aVeryLongTimeIsNoTimeAtAll() {
        // 1e30 s overflows any clock that counts in whole nanoseconds
        Ran ran = Ran.with(
                "choose", "--within", "1e30 s", "--strategy", "load alone", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(ran.out()).contains("all that the kit allows");
    }

    @Test
    void aFolderThatCannotBeMadeIsSaidBeforeTheSearch() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        Ran ran = Ran.with("choose", "--into", file.toString(), DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("--into", "there is a file of that name");
    }

    @Test
    void aHyphenAsOutputIsTheTerminal() {
        Ran ran = Ran.with("profile", "--output", "-", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.out()).contains("Hardest: ");
        assertThat(Path.of("-")).doesNotExist();
    }

    @Test
    void filesThatCannotBeAScenarioAreToldApart() {
        assertThat(Ran.with("read", folder.toString()).err()).contains("is a folder");
        assertThat(Ran.with("read", DEMO + "plover.yaml", DEMO + "plover.yaml").err())
                .contains("is named twice");
        assertThat(Ran.with("read", "").err()).contains("no file name");
        assertThat(Ran.with("read", DEMO + "plover.yaml").err()).contains("machine", "name both");
        assertThat(Ran.with("read", DEMO + "plover.yaml", DEMO + "heron.yaml", DEMO + "room.yaml")
                        .err())
                .contains("person: this key stands in two files");
    }

    @Test
    void whyRefusesAnAngleOutsideTheRange() {
        Ran ran = Ran.with("why", "--knee", "170 deg", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("170 deg", "81.4°", "12.0°");
    }

    @Test
    void whySaysWhereThereIsNoRubber() {
        Ran ran = Ran.with("why", "--of", "rubber", DEMO + "plover.yaml", DEMO + "room.yaml");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("no rubber");
    }

    @Test
    void imperialReadersGetTheirUnits() {
        String[] files = {DEMO + "plover.yaml", DEMO + "room.yaml"};
        String profile = Ran.with("profile", "--all", "--parts", "-u", "imperial", files[0], files[1])
                .out();
        assertThat(profile).doesNotContainPattern("[\\s\u00a0](cm|mm|N|N·m|MPa)\\b");
        String chosen = Ran.with("choose", "-u", "imperial", "--strategy", "relieve-low", files[0], files[1])
                .out();
        // a length that is set stands as it was measured, with the reader's own beside it
        assertThat(chosen).containsPattern("stop at\\s+mark\\s+20.cm\\s+\\(about\\s+7\\.87.in\\)");
        assertThat(chosen).doesNotContainPattern("[\\s\u00a0](mm|N|N·m|MPa)\\b");
    }
}
