package counterpull.scenario.write;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.scenario.Files;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Room;
import counterpull.scenario.content.Unsure;
import counterpull.scenario.tree.Source;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ScenarioWriterTest {
    static Stream<Scenario> everyScenario() {
        return Files.all();
    }

    /** crosscheck: writer and reader are each other's inverse, to the last bit. */
    @ParameterizedTest
    @MethodSource("everyScenario")
    void whatIsWrittenReadsBackAsAnEqualScenario(Scenario scenario) {
        String json = ScenarioWriter.json(scenario);
        Scenario back = Files.read(List.of(Source.of("a.json", json)));
        assertThat(back).isEqualTo(scenario);
        assertThat(ScenarioWriter.json(back)).isEqualTo(json);
    }

    @Test
    void numbersThatNoOneWouldTypeReadBackToo() {
        Random random = new Random(20261125);
        PressScenario base = Files.example();
        for (int i = 0; i < 200; i++) {
            PressScenario odd = with(base, tempo(random), push(random));
            assertThat(Files.read(List.of(Source.of("a.json", ScenarioWriter.json(odd)))))
                    .isEqualTo(odd);
        }
    }

    private static Tempo tempo(Random random) {
        double a = 0.2 + 5 * random.nextDouble();
        double b = 0.2 + 5 * random.nextDouble();
        return switch (random.nextInt(3)) {
            case 0 -> new FullStop(new Tempo.Seconds(a, random.nextDouble(), b, random.nextDouble()));
            case 1 -> new Flowing(a, b, Flowing.Turn.values()[random.nextInt(3)]);
            default -> new Bounce(a / 2, b / 2, 0.1 + random.nextDouble());
        };
    }

    private static Pushing push(Random random) {
        double low = -0.7 * random.nextDouble();
        Push push = switch (random.nextInt(3)) {
            case 0 -> new Push.Angled(low);
            case 1 -> new Push.Through(Push.BodyPoint.values()[random.nextInt(2)]);
            default -> new Push.LeastEffort(low, low + 0.1 + 0.5 * random.nextDouble());
        };
        return new Pushing(push, 0.4 * random.nextDouble());
    }

    private static PressScenario with(PressScenario base, Tempo tempo, Pushing pushing) {
        Exercise exercise = base.exercise();
        return new PressScenario(
                base.about(),
                base.client(),
                base.machine(),
                new Exercise(exercise.using(), exercise.leftShare(), exercise.stance(), pushing, exercise.trying()),
                base.loaded(),
                tempo,
                base.wanted(),
                base.room(),
                base.unsure());
    }

    @Test
    void anEmptyRoomAndABareMachineReadBack() {
        PressScenario base = Files.example();
        PressScenario bare = new PressScenario(
                base.about(),
                base.client(),
                base.machine(),
                base.exercise(),
                Loaded.nothing(),
                base.tempo(),
                base.wanted(),
                Room.empty(),
                Unsure.nothing());
        assertThat(Files.read(List.of(Source.of("a.json", ScenarioWriter.json(bare)))))
                .isEqualTo(bare);
    }

    @Test
    void writesInPeoplesUnits() {
        assertThat(ScenarioWriter.json(Files.example()))
                .contains(
                        "\"rail angle\" : \"45 deg\"",
                        "\"thigh\" : \"43 cm\"",
                        "\"carriage\" : \"40 kg\"",
                        "\"bore\" : \"6 mm\"",
                        "\"kneecap stress\" : \"6 MPa\"");
    }
}
