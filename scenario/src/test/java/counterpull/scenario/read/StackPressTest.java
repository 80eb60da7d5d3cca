package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Sled;
import counterpull.scenario.Files;
import counterpull.scenario.PressScenario;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.tree.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A press that a weight stack drives, from the file to the engine's sled. */
class StackPressTest {
    private static final String PLATES = "plates in the middle: [2.5 kg]";

    private static PressScenario level(String rides) {
        String text = Files.stackPressText()
                .replace("rail angle: 45 deg", "rail angle: 0 deg")
                .replace("rides: plate", "rides: " + rides)
                .replace("counterweight: {mass: 5 kg, runs: along the rail}", "")
                .replace("lines:\n    - rubber: R1", "lines: []\n  # - rubber: R1");
        int kit = text.indexOf("  # - rubber: R1");
        int end = text.indexOf("\n\n", kit);
        text = text.substring(0, kit)
                + text.substring(end).replaceFirst("mass: 2.5 kg, count: 3", "mass: 60 kg, count: 1");
        return (PressScenario)
                Files.read(List.of(Source.of("level.yaml", text.replace(PLATES, "plates in the middle: [60 kg]"))));
    }

    @Test
    void theMachineHasTheStackAsWritten() {
        Sled sled = Files.stackPress().machine().sled();
        assertThat(sled.platesRide()).isFalse();
        assertThat(sled.stack().orElseThrow().ratio()).isEqualTo(1);
        assertThat(sled.stack().orElseThrow().friction()).isEqualTo(0.06);
        assertThat(sled.stack().orElseThrow().stack().own()).isEqualTo(5);
        assertThat(sled.stack().orElseThrow().moving()).isEqualTo(2);
        assertThat(Files.example().machine().sled().stack()).isEmpty();
    }

    /** crosscheck: on a level rail nothing but the stack holds the plate: (5 + 60) kg × g; 1e-9 for rounding. */
    @Test
    void onALevelRailThePlateIsHeldAgainstTheStackAlone() {
        PressProfile plate = PressProfile.of(level("plate").task());
        for (int i = 0; i < plate.positions(); i++) {
            assertThat(plate.force(Phase.HELD, i)).isCloseTo(65 * Constants.STANDARD_GRAVITY, within(1e-9));
        }
    }

    /** The same force is held where the seat rides: at rest it does not matter which end moves; 1e-9 for rounding. */
    @Test
    void heldItDoesNotMatterWhichEndRides() {
        PressProfile plate = PressProfile.of(level("plate").task());
        PressProfile seat = PressProfile.of(level("seat").task());
        int middle = plate.positions() / 2;
        assertThat(seat.force(Phase.HELD, middle)).isCloseTo(plate.force(Phase.HELD, middle), within(1e-9));
        // but the person's own mass has to be started and stopped with the seat
        assertThat(seat.force(Phase.LIFTING, 10)).isGreaterThan(plate.force(Phase.LIFTING, 10));
    }

    @Test
    void aStackHasNoSides() {
        String text = Files.stackPressText().replace(PLATES, "plates each side: [2.5 kg]");
        List<Problem> problems = ScenarioReader.read(List.of(Source.of("stack.yaml", text)))
                .problems()
                .all();
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(Code.CONTRADICTION);
            assertThat(problem.line()).contains("no sides", "plates in the middle");
        });
    }

    @Test
    void platesCanGoOnTheCarriageBesideAStack() {
        String text = Files.stackPressText().replace("plates: on the stack}", "plates: on the carriage}");
        PressScenario scenario = (PressScenario) Files.read(List.of(Source.of("stack.yaml", text)));
        assertThat(scenario.machine().sled().platesRide()).isTrue();
    }
}
