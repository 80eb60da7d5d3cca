package counterpull.app.cli;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The library's files beside the demonstration person. */
final class LibraryExercises {
    private static final Path EXERCISES = Path.of("..", "exercises");
    private static final Path PERSON = Path.of("..", "demo", "dunlin.yaml");
    private static final String END = ".yaml";

    private LibraryExercises() {}

    static List<String> names() {
        try (Stream<Path> files = Files.list(EXERCISES)) {
            return files.map(file -> file.getFileName().toString().replace(END, ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Scenario scenario(String name) {
        return scenario(Source.of(EXERCISES.resolve(name + END)));
    }

    static Scenario scenario(Source exercise) {
        ScenarioReader.Result result = ScenarioReader.read(List.of(exercise, Source.of(PERSON)));
        return result.scenario()
                .orElseThrow(() ->
                        new AssertionError(String.join("\n", result.problems().lines())));
    }

    static Profile profile(Scenario scenario) {
        return scenario instanceof ExerciseScenario exercise
                ? ExerciseProfile.of(exercise.task())
                : PressProfile.of(((PressScenario) scenario).task());
    }
}
