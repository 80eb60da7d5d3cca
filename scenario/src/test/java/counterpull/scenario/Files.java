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

    /** The knee extension of the design's worked example D. */
    public static final String BARE_KNEE_EXTENSION = """
            format: counterpull/1
            person:
              name: Wren
              sex: male
              age: 41 years
              stature: 175 cm
              mass: 80 kg
              segment table: dempster-winter
              limbs: {left: {}}
            exercise:
              kind: hinge
              limbs: left
              lift: knee extension
              plane: upright
              thigh direction: 0 deg
              range: {bottom: 90 deg, top: 0 deg}
            resists:
              - dead weight: {name: cuff, at: {on: shank, along: 35 cm}, chosen: 8 kg}
            tempo:
              full stop: {lowering: 2 s, lifting: 2 s}
            """;

    private Files() {}

    /** The text of a file that ships with the program. */
    public static String shipped(String name) {
        try (InputStream in = PressScenario.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** One exercise of each kind that the commented example does not do, and each way a hand, a foot or a hip can lead. */
    public static Stream<String> kinds() {
        return Stream.of(
                        "bench-press.yaml",
                        "press-overhead-sideways.yaml",
                        "foot-press.yaml",
                        "squat.yaml",
                        "hip-hinge.yaml",
                        "pulldown-by-readings.yaml")
                .map(Files::kind);
    }

    /** The text of one of them. */
    public static String kind(String name) {
        return shipped("/exercises/" + name);
    }

    /** The commented example of a press. */
    public static PressScenario example() {
        return (PressScenario) read(List.of(Source.of("example.yaml", shipped("example.yaml"))));
    }

    /** The commented example with its weight stack, and a test that pain ended. */
    public static PressScenario stackPress() {
        return (PressScenario) read(List.of(Source.of("stack.yaml", stackPressText())));
    }

    /** Its text. */
    public static String stackPressText() {
        return shipped("example.yaml")
                .replace("  # stack:", "  stack:")
                .replace("ended: reached ", "ended: pain ")
                .replace("  plates each side: [20 kg, 10 kg]\n", "");
    }

    /** The commented example of any other exercise. */
    public static ExerciseScenario exercise() {
        return exercise(shipped("example-exercise.yaml"));
    }

    /** An exercise that must have no problem. */
    public static ExerciseScenario exercise(String yaml) {
        return (ExerciseScenario) read(List.of(Source.of("exercise.yaml", yaml)));
    }

    /** The demo's people. */
    public static Stream<String> people() {
        return Stream.of("plover.yaml", "heron.yaml", "crane.yaml");
    }

    /** A person of the demo in the demo's room. */
    public static PressScenario demo(String person) {
        return (PressScenario) read(List.of(Source.of(DEMO.resolve(person)), Source.of(DEMO.resolve("room.yaml"))));
    }

    /** Every scenario there is. */
    public static Stream<Scenario> all() {
        Stream<Scenario> exercises = Stream.concat(Stream.of(exercise()), kinds().map(Files::exercise));
        return Stream.concat(presses(), exercises);
    }

    /** Every press. */
    public static Stream<PressScenario> presses() {
        return Stream.concat(Stream.of(example(), stackPress()), people().map(Files::demo));
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
