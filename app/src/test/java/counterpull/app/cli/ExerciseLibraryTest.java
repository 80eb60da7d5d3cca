package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.About;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every exercise of the library, with an invented person whose ranges were all measured. */
class ExerciseLibraryTest {
    private static final Path EXERCISES = Path.of("..", "exercises");
    private static final Path PERSON = Path.of("..", "demo", "dunlin.yaml");

    static Stream<String> names() {
        return Library.names().stream();
    }

    private static Scenario scenario(String name) {
        return scenario(Library.named(name).orElseThrow());
    }

    private static Scenario scenario(Source exercise) {
        ScenarioReader.Result result = ScenarioReader.read(List.of(exercise, Source.of(PERSON)));
        assertThat(result.problems().lines()).isEmpty();
        return result.scenario().orElseThrow();
    }

    @Test
    void travelsWithTheProgram() throws IOException {
        try (Stream<Path> files = Files.list(EXERCISES)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .allMatch(file -> file.endsWith(".yaml"))
                    .hasSameSizeAs(Library.names());
        }
        assertThat(Library.names()).contains("knee-extension-cuff", "elbow-flexion-dumbbell", "knee-extension-lever");
    }

    @Test
    void holdsNothingUnderOtherNames() {
        for (String name : List.of("no-such-exercise", "../demo/dunlin", "", "KNEE", "a/b")) {
            assertThat(Library.named(name)).as(name).isEqualTo(Optional.empty());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void saysWhatItIsWhatToMeasureAndWhatToLookOutFor(String name) {
        About about = scenario(name).about().orElseThrow();
        assertThat(about.name()).isNotBlank();
        assertThat(about.what()).endsWith(".");
        assertThat(about.measure()).isNotEmpty().allSatisfy(item -> {
            assertThat(item.what()).isNotBlank();
            assertThat(item.how()).endsWith(".");
        });
        assertThat(about.cautions())
                .isNotEmpty()
                .allSatisfy(caution -> assertThat(caution).endsWith("."));
    }

    @Test
    void theHowTosExampleCanBeComputedAsItStands() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "howto", "add-an-exercise.md"));
        int from = page.indexOf("```yaml\n") + "```yaml\n".length();
        Scenario example = scenario(Source.of("howto.yaml", page.substring(from, page.indexOf("```", from))));
        computed(example);
        assertThat(((ExerciseScenario) example).task().plates()).isEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("names")
    void canBeComputedForTheDemonstrationPerson(String name) {
        computed(scenario(name));
    }

    private static void computed(Scenario scenario) {
        if (scenario instanceof ExerciseScenario exercise) {
            ExerciseProfile profile = ExerciseProfile.of(exercise.task());
            profile.limbs().forEach(limb -> torques(profile, limb));
        } else if (scenario instanceof PressScenario press) {
            PressProfile profile = PressProfile.of(press.task());
            assertThat(profile.force(Phase.HELD, 0)).isPositive();
        }
    }

    /** All finite, and somewhere the exercise asks for something: 1 N·m is less than any limb weighs on its joint. */
    private static void torques(Profile profile, ExerciseLimb limb) {
        double largest = 0;
        for (Joint joint : limb.path().joints()) {
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    double torque = limb.torque(joint, phase, i);
                    assertThat(torque).isFinite();
                    largest = Math.max(largest, Math.abs(torque));
                }
            }
        }
        assertThat(largest).isBetween(1.0, 1000.0);
    }
}
