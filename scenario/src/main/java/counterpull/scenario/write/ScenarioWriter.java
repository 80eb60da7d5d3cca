package counterpull.scenario.write;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.Room;
import counterpull.scenario.format.Out;

/**
 * Writes a scenario as JSON of the same format; it reads back as an equal scenario, to the last bit of every number. A test
 * taken with a force and a lever comes out as its torque.
 */
public final class ScenarioWriter {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

    private ScenarioWriter() {}

    /** The scenario as indented JSON that ends with a line break. */
    public static String json(Scenario scenario) {
        Out out = new Out().put("format", "counterpull/1");
        scenario.about().ifPresent(about -> out.put("about", AboutWriter.about(about)));
        out.put("person", PersonWriter.person(scenario.client()));
        if (scenario instanceof PressScenario press) {
            press(press, out);
        } else if (scenario instanceof ExerciseScenario exercise) {
            exercise(exercise, out);
        }
        return text(out);
    }

    private static void press(PressScenario scenario, Out out) {
        out.put("machine", MachineWriter.machine(scenario.machine()))
                .put("exercise", ExerciseWriter.exercise(scenario.exercise()))
                .put("resists", LoadedWriter.resists(scenario.loaded()))
                .put("tempo", TempoWriter.tempo(scenario.tempo()))
                .put(
                        "target",
                        WantedWriter.target(
                                scenario.wanted().target(), scenario.wanted().plan()))
                .put("limits", WantedWriter.limits(scenario.wanted().bounds()));
        if (!scenario.room().equals(Room.empty())) {
            out.put("kit", RoomWriter.kit(scenario.room()));
        }
        UnsureWriter.write(scenario.unsure(), out);
    }

    private static void exercise(ExerciseScenario scenario, Out out) {
        DoingWriter.write(scenario.doing(), out);
        out.put("tempo", TempoWriter.tempo(scenario.tempo()));
        WantedWriter.aim(scenario.aim(), out);
        UnsureWriter.write(scenario.unsure(), out);
    }

    private static String text(Out out) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(INDENTER);
        printer.indentArraysWith(INDENTER);
        try {
            return MAPPER.writer(printer).writeValueAsString(out.node()) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree of texts can always be written", impossible);
        }
    }
}
