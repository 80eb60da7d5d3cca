package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import counterpull.scenario.Files;
import counterpull.scenario.tree.Source;
import counterpull.scenario.write.ScenarioWriter;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a file holds, a person gets clear messages. The heap of this test is 512 MB (pom.xml). */
class MalformedFilesTest {
    /** Against hanging only; each takes some milliseconds. */
    private static final Duration HANGS = Duration.ofSeconds(10);

    private static final Map<String, Source> FILES = MalformedFiles.all();

    static Stream<String> names() {
        return FILES.keySet().stream();
    }

    @Test
    void areAtLeastTwoHundred() {
        assertThat(FILES).hasSizeGreaterThanOrEqualTo(200);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("names")
    void isRefusedWithClearMessages(String name) {
        ScenarioReader.Result result =
                assertTimeoutPreemptively(HANGS, () -> ScenarioReader.read(List.of(FILES.get(name))), name);
        assertThat(result.scenario()).as(name).isEmpty();
        assertThat(result.problems().lines())
                .as(name)
                .isNotEmpty()
                .hasSizeLessThanOrEqualTo(51)
                .allSatisfy(line -> {
                    assertThat(line)
                            .hasSizeBetween(10, 500)
                            .doesNotContain("Exception", "snakeyaml", "jackson", "\n", "null,");
                    assertThat(line).matches(".*\\[[a-z-]+]|and \\d+ more");
                });
    }

    @Test
    void anyDamageToAScenarioEitherLeavesOneOrIsReported() {
        Random random = new Random(7);
        byte[] yaml = Files.shipped("example.yaml").getBytes(StandardCharsets.UTF_8);
        byte[] exercise = Files.shipped("example-exercise.yaml").getBytes(StandardCharsets.UTF_8);
        byte[] json = ScenarioWriter.json(Files.example()).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 1500; i++) {
            boolean asJson = i % 2 == 0;
            byte[] damaged = damaged(asJson ? json : i % 4 == 1 ? exercise : yaml, random);
            Source source = Source.of(asJson ? "a.json" : "a.yaml", damaged);
            ScenarioReader.Result result =
                    assertTimeoutPreemptively(HANGS, () -> ScenarioReader.read(List.of(source)), "damage " + i);
            assertThat(result.scenario().isPresent())
                    .as("damage " + i)
                    .isEqualTo(result.problems().isEmpty());
        }
    }

    /** Up to five bytes changed, dropped or moved. */
    private static byte[] damaged(byte[] whole, Random random) {
        byte[] damaged = whole.clone();
        for (int i = random.nextInt(5); i >= 0; i--) {
            int at = random.nextInt(damaged.length);
            int from = random.nextInt(damaged.length);
            damaged[at] = random.nextBoolean() ? damaged[from] : (byte) (32 + random.nextInt(95));
        }
        int cut = random.nextInt(8) == 0 ? random.nextInt(damaged.length) : damaged.length;
        return Arrays.copyOf(damaged, cut);
    }
}
