package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exercises with a slip of the tape or of the keyboard, through the whole program: code 2, and words that help. */
class BadExerciseFilesTest {
    private static final String DUNLIN = "../demo/dunlin.yaml";

    @TempDir
    Path folder;

    private Ran with(String exercise, String from, String to) throws IOException {
        String text = Ran.with("exercises", exercise).out();
        assertThat(text).contains(from);
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, text.replace(from, to));
        return Ran.with("read", DUNLIN, "--exercise", file.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "knee-extension-cuff | along: 36 cm | along: 190 cm | from the knee is not on the shank",
                "knee-extension-cuff | along: 36 cm | along: -36 cm | the limits are -30",
                "knee-extension-cuff | thigh direction: 0 deg | thigh direction: 400 deg | 400 deg is above 180 deg",
                "knee-extension-cuff | chosen: 6 kg | chosen: 1e300 kg | is above 1000 kg",
                "knee-extension-cuff | dead weight: | deadweight: | Did you mean \"dead weight\"?",
                "knee-extension-cuff | along: 36 cm | along: 14 1/2 in | Write a fraction with a point",
                "knee-extension-cuff | kind: hinge | kind: hinges | Did you mean \"hinge\"?",
                "knee-extension-cuff | name: ankle cuff | name: \"a\\u0007b\" | cannot be seen",
                "knee-extension-stack | lowering: 3 s | lowering: 0.15 s | leg extension machine: the line would go slack",
                "knee-extension-stack | angle: 5 deg | angle: -20 deg | leg extension machine: lever angle",
                "knee-extension-lever-tubing | forward: 75 cm | forward: 275 cm | T1 would be stretched past its tested length"
            })
    void aSlipIsSaidBeforeAnythingIsComputed(String exercise, String from, String to, String says) throws IOException {
        Ran ran = with(exercise, from, to);
        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains(says).doesNotContain("Exception").doesNotContain("rad or m");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aRangeThatIsOnePlaceIsRefusedInItsOwnUnit() throws IOException {
        Ran ran =
                with("knee-extension-cuff", "plane: upright", "plane: upright\n  range: {bottom: 30 deg, top: 30 deg}");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("same place, 30 deg").doesNotContain("rad or m");
    }

    @Test
    void aPersonWithoutTheRangeOfAPressIsToldWhatToMeasure() throws IOException {
        String person = Files.readString(Path.of(DUNLIN)).replaceAll("(?m)^ *range: .*\\n", "");
        Path file = Files.writeString(folder.resolve("who.yaml"), person);
        Ran ran = Ran.with("profile", file.toString(), "-e", "leg-press-stack-seat");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("limbs.left.range", "measure it on the machine", "{bottom, top}");
    }

    @Test
    void aNumberOutsideALimitIsShownAsAPersonWouldWriteIt() throws IOException {
        Ran ran = with("knee-extension-stack", "lowering: 3 s", "lowering: 0.15 s");
        // m/s² stands in no file, so it has no unit of its own to be shown in; three digits are enough
        assertThat(ran.err()).doesNotContainPattern("\\d\\.\\d{4}");
    }

    @Test
    void aPersonWithoutAnExerciseIsToldHowToNameOne() {
        Ran ran = Ran.with("profile", DUNLIN);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err())
                .contains("--exercise NAME", "counterpull exercises")
                .doesNotContain("machine: this key");
    }

    @Test
    void anExerciseWithoutAPersonIsToldHowToNameOne() {
        Ran ran = Ran.with("profile", "knee-extension-cuff");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("do not say who", "PERSON.yaml");
    }

    @ParameterizedTest
    @CsvSource({
        "knee-extention-cuff,knee-extension-cuff",
        "exercises/knee-extension-cuff.yaml,knee-extension-cuff",
        "Squat-Bar,squat-bar",
        "../x,lists the names"
    })
    void aMistypedNameIsAnsweredWithTheNearest(String name, String says) {
        Ran ran = Ran.with("profile", DUNLIN, "--exercise", name);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains(says);
    }

    @Test
    void anExerciseThatIsAFolderIsSaidToBeOne() {
        Ran ran = Ran.with("profile", DUNLIN, "--exercise", folder.toString());
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("is a folder");
    }

    @Test
    void theSameExerciseTwiceIsNoComparison() {
        Ran ran = Ran.with("compare", DUNLIN, "-w", "squat-bar", "-w", "squat-bar");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("squat-bar is given twice");
    }

    @Test
    void aPageThatCannotBeWrittenIsSaidUnderItsOwnOption() {
        String nowhere = folder.resolve("no/such/page.html").toString();
        Ran ran = Ran.with("compare", DUNLIN, "-w", "squat-bar", "-w", "deadlift-bar", "--into", nowhere);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).startsWith("--into:").contains("does not exist");
    }

    @Test
    void aHyphenIsTheTerminalForAPageAndRefusedForACard() {
        assertThat(Ran.with("report", DUNLIN, "-e", "squat-bar", "-o", "-").out())
                .startsWith("<!");
        Ran card = Ran.with("card", DUNLIN, "-e", "squat-bar", "-o", "-");
        assertThat(card.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(card.err()).contains("name a file");
    }

    @Test
    void searchingAnExerciseSaysWhatToAskInstead() {
        Ran ran = Ran.with("choose", DUNLIN, "-e", "squat-bar");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("profile", "compare");
    }

    @Test
    void anotherPullIsAnsweredWithTheOnesThatAreThere() {
        Ran ran = Ran.with("why", DUNLIN, "-e", "knee-extension-lever-tubing", "--of", "pull", "--line", "9");
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.err()).contains("1 leg extension lever", "helping tube");
    }
}
