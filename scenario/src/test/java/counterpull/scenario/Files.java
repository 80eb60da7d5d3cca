package counterpull.scenario;

import counterpull.scenario.problem.Problem;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files that the tests read. */
public final class Files {
    private static final Path DEMO = Path.of("..", "demo");

    private Files() {}

    /** The text of a file that ships with the program. */
    public static String shipped(String name) {
        try (InputStream in = Scenario.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The commented example. */
    public static Scenario example() {
        return read(List.of(Source.of("example.yaml", shipped("example.yaml"))));
    }

    /** The demo's people. */
    public static Stream<String> people() {
        return Stream.of("plover.yaml", "heron.yaml", "crane.yaml");
    }

    /** A person of the demo in the demo's room. */
    public static Scenario demo(String person) {
        return read(List.of(Source.of(DEMO.resolve(person)), Source.of(DEMO.resolve("room.yaml"))));
    }

    /** Every scenario there is. */
    public static Stream<Scenario> all() {
        return Stream.concat(Stream.of(example()), people().map(Files::demo));
    }

    /** A scenario that must have no problem. */
    public static Scenario read(List<Source> sources) {
        ScenarioReader.Result result = ScenarioReader.read(sources);
        return result.scenario()
                .orElseThrow(() -> new AssertionError(String.join(
                        "\n",
                        result.problems().all().stream().map(Problem::line).toList())));
    }
}
