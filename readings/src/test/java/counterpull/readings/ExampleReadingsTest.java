package counterpull.readings;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.readings.rubber.RubberSubject;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The commented example is the format's documentation: it reads without a problem, answers, and uses every key that readers know. */
class ExampleReadingsTest {
    private static final Pattern KEY = Pattern.compile("[{,\\s]([a-z][a-z ]*):");

    private static String example() {
        try (InputStream in =
                ExampleReadingsTest.class.getResourceAsStream("/counterpull/readings/example-readings.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void itReadsWithoutAProblemAndEverySubjectHasAnAnswer() {
        ReadingsReader.Result result = ReadingsReader.read(Source.of("example.yaml", example()));
        assertThat(result.problems().lines()).isEmpty();
        List<Subject> subjects = result.readings().orElseThrow().subjects();
        assertThat(subjects).hasSize(8);
        assertThat(subjects)
                .allSatisfy(subject ->
                        assertThat(subject.forScenario()).as(subject.name()).isNotBlank());
    }

    /** A record without a day of its own is judged on the day given from outside, else on the day of its readings. */
    @Test
    void whatComesDueIsJudgedToday() {
        String undated = example().replaceAll("(?m)^ +today:.*\n", "");
        assertThat(due(ReadingsReader.read(Source.of("example.yaml", undated))))
                .isEqualTo(LocalDate.parse("2026-11-20"));
        assertThat(due(ReadingsReader.read(Source.of("example.yaml", undated), LocalDate.parse("2027-06-01"))))
                .isEqualTo(LocalDate.parse("2027-06-01"));
        assertThat(due(ReadingsReader.read(Source.of("example.yaml", example()), LocalDate.parse("2027-06-01"))))
                .isEqualTo(LocalDate.parse("2026-11-25"));
    }

    private static LocalDate due(ReadingsReader.Result result) {
        return result.readings().orElseThrow().subjects().stream()
                .filter(RubberSubject.class::isInstance)
                .map(subject -> ((RubberSubject) subject).life().orElseThrow().day())
                .findFirst()
                .orElseThrow();
    }

    /** Keys stand in the readers' sources as the words of their shapes: each is found in the example. */
    @Test
    void itUsesEveryKey() throws IOException {
        TreeSet<String> known = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/counterpull/readings"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.toString().contains("table"))
                    .toList()) {
                known.addAll(shapes(Files.readString(file)));
            }
        }
        assertThat(known).as("the control: shapes are found").contains("natural length", "foot plate", "efforts");
        TreeSet<String> used = new TreeSet<>();
        Matcher keys = KEY.matcher(example());
        while (keys.find()) {
            used.add(keys.group(1));
        }
        assertThat(used).containsAll(known);
    }

    private static TreeSet<String> shapes(String source) {
        TreeSet<String> keys = new TreeSet<>();
        Matcher shape = Pattern.compile("(?:Shape\\.of|bothWays)\\(\\s*((?:\"[^\"]*\"(?:,\\s*)?)+)\\)")
                .matcher(source);
        while (shape.find()) {
            String[] words = shape.group(1).split(",\\s*");
            for (int i = 1; i < words.length; i++) {
                keys.add(words[i].strip().replace("\"", ""));
            }
        }
        return keys;
    }
}
