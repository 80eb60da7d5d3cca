package counterpull.report;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.page.ExerciseFindings;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import counterpull.scenario.units.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Exercises of the library with the demonstration person, and changes of them. */
public final class Exercises {
    private Exercises() {}

    /** The text of an exercise's file. */
    public static String text(String name) {
        return read(Path.of("..", "exercises", name + ".yaml"));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Any scenario: an exercise's text beside the demonstration person. */
    public static Scenario any(String yaml) {
        String person = read(Path.of("..", "demo", "dunlin.yaml"));
        ScenarioReader.Result result =
                ScenarioReader.read(List.of(Source.of("exercise.yaml", yaml), Source.of("dunlin.yaml", person)));
        return result.scenario()
                .orElseThrow(
                        () -> new IllegalStateException(result.problems().all().toString()));
    }

    /** An exercise other than a press on a rail. */
    public static ExerciseScenario scenario(String yaml) {
        return (ExerciseScenario) any(yaml);
    }

    /** Its profile. */
    public static ExerciseProfile profile(String name) {
        return ExerciseProfile.of(scenario(text(name)).task());
    }

    /** The profile of any exercise of the library, a press too. */
    public static Profile anyProfile(String name) {
        return any(text(name)) instanceof PressScenario press ? PressProfile.of(press.task()) : profile(name);
    }

    /** What its report is written from. */
    public static ExerciseFindings findings(String yaml, Units units) {
        ExerciseScenario scenario = scenario(yaml);
        return new ExerciseFindings(heading(), scenario, ExerciseProfile.of(scenario.task()), units);
    }

    /** What stands at a page's head. */
    public static Heading heading() {
        return new Heading("dunlin", "Dunlin", "", LocalDate.of(2026, 11, 25), "0.1.0");
    }
}
