package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that says how sure an answer is. */
class SureCommandTest {
    private static final String[] PRESS = {"../demo/plover.yaml", "../demo/room.yaml"};

    private static Ran sure(String... more) {
        String[] arguments = new String[1 + PRESS.length + more.length];
        arguments[0] = "sure";
        System.arraycopy(PRESS, 0, arguments, 1, PRESS.length);
        System.arraycopy(more, 0, arguments, 1 + PRESS.length, more.length);
        return Ran.with(arguments);
    }

    @Test
    void theSameSeedSaysTheSameWhicheverThreadDrew() {
        Ran one = sure("--draws", "700", "--seed", "9");
        assertThat(one.code()).as(one.err()).isZero();
        assertThat(sure("--draws", "700", "--seed", "9").out()).isEqualTo(one.out());
        assertThat(sure("--draws", "700", "--seed", "10").out()).isNotEqualTo(one.out());
        assertThat(one.out()).contains("nine in ten of 700 draws", "Not varied: ", "licensed professional");
    }

    @Test
    void everyBandForAProgram() throws IOException {
        Ran csv = sure("--draws", "200", "-f", "csv");
        assertThat(csv.out().lines().count()).isEqualTo(1 + 3 * 101 * 3);
        JsonNode json =
                new ObjectMapper().readTree(sure("--draws", "200", "-f", "json").out());
        assertThat(json.path("draws").asInt()).isEqualTo(200);
        assertThat(json.path("bands")).hasSize(3 * 101 * 3);
        assertThat(json.at("/largest_effort/low").asDouble())
                .isLessThan(json.at("/largest_effort/high").asDouble());
        double shares = 0;
        for (JsonNode one : json.path("contributions")) {
            shares += one.path("share").asDouble();
        }
        assertThat(shares).isBetween(0.999999, 1.000001);
    }

    /** What is stated narrows what is said: every input certain but strength, which was tested. */
    @Test
    void whatIsStatedIsUsed(@TempDir Path folder) throws IOException {
        Path stated = Files.writeString(folder.resolve("stated.yaml"), """
                format: counterpull/1
                uncertainty:
                  push: 0 deg
                  pressure point: 0
                """);
        Ran usual = sure("--draws", "300");
        Ran narrower = sure(stated.toString(), "--draws", "300");
        assertThat(narrower.code()).as(narrower.err()).isZero();
        assertThat(usual.out()).contains("which way the push goes");
        assertThat(narrower.out())
                .doesNotContain("which way the push goes")
                .contains("Next reading: measure the distance from hip");
    }

    @Test
    void inInchesToo() {
        assertThat(sure("--draws", "200", "-u", "imperial").out()).contains("±0.39\u00A0in");
    }

    @Test
    void aPersonOfUnknownStrength(@TempDir Path folder) throws IOException {
        String child = Files.readString(Path.of("../demo/dunlin.yaml"))
                .replace("age: 34 years", "age: 12 years")
                .replaceAll("      tests:\n.*\n", "");
        Path file = Files.writeString(folder.resolve("child.yaml"), child);
        Ran ran = Ran.with("sure", file.toString(), "--exercise", "squat-bar", "--draws", "100");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("No effort is known anywhere in this range");
        Ran report = Ran.with("report", file.toString(), "--exercise", "squat-bar", "-o", "-");
        assertThat(report.code()).as(report.err()).isZero();
    }

    @Test
    void refusesWhatItCannotDo() {
        assertThat(sure("--draws", "5").code()).isEqualTo(Exit.BAD_INPUT);
        assertThat(sure("--draws", "5").err()).contains("--draws: 5 must be from 100 to 1000000");
        assertThat(sure("--tester", "by eye").err()).contains("hand-held, belt-fixed, isokinetic");
    }
}
