package counterpull.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterpull.engine.choice.Judge;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Turnaround;
import counterpull.report.result.ResultJson;
import counterpull.scenario.PressScenario;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole scenarios, from the file to the printed number, against a second derivation that was written in another language from the
 * equations alone and differentiates the motion numerically. The scenarios differ in everything a rail press can differ in:
 * what rides, rail angle, tilt, hip beside the line, soft seat, limbs, tempo, push, laws and hangs of rubber, counterweights, units, tape.
 */
class SecondDerivationCrosscheckTest {
    private static final Path FOLDER = Path.of("src/test/resources/reference/second-derivation");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /**
     * Of the column's largest value. The stencils are good to 4e-8 of a torque near straight, the golden section of the push of
     * least effort to about the root of the rounding error, 2e-8 rad, and an effort passes that on tenfold.
     */
    private static final double CLOSE = 3e-7;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "45-bare-worked",
                "seat-minus30",
                "20-tilt-one-limb",
                "60-unequal-hip",
                "45-falling-tape-lines-knee",
                "30-least-one-limb",
                "50-least-unequal",
                "40-bench-shift-across",
                "seat-one-limb-lines",
                "seat-least-unequal",
                "55-fast-old",
                "45-old-not-known",
                "80-lying-several-lines",
                "35-least-hip-half-known"
            })
    void everyNumberIsTheSame(String name) throws IOException {
        PressScenario scenario = scenario(text(name));
        PressProfile profile = PressProfile.of(scenario.task());
        ReferenceTable reference = ReferenceTable.read(FOLDER.resolve(name + ".csv"));
        assertThat(reference.rows().size()).as("rows of %s", name).isGreaterThanOrEqualTo(15);
        assertThat(differences(reference, profile)).isEmpty();
        whole(name, profile, Judge.of(profile, scenario.goal()));
    }

    private static void whole(String name, PressProfile profile, Verdict verdict) throws IOException {
        ReferenceTable table = ReferenceTable.read(FOLDER.resolve("whole.csv"));
        int row = table.rows().stream().map(cells -> cells.get(0)).toList().indexOf(name);
        Turnaround turn = profile.turnaround();
        near(table, row, "turn_inertia", turn.inertialForce());
        near(table, row, "turn_total", turn.total());
        near(table, row, "moving_over_held", turn.movingOverHeld());
        near(table, row, "shortfall", verdict.shortfall());
        near(table, row, "peak_effort", verdict.peak().orElseThrow().limiting().effort());
    }

    private static void near(ReferenceTable table, int row, String column, double ours) {
        double theirs = Double.parseDouble(table.cell(row, column));
        // a maximum over time was taken over 200 001 instants: the peak of a parabola is missed by less than CLOSE of
        // it
        assertThat(ours).as(column).isCloseTo(theirs, within(CLOSE * theirs));
    }

    @Test
    void anotherFrictionIsNoticed() throws IOException {
        String other = text("45-bare-worked").replace("constant: 15 N", "constant: 15.001 N");
        PressProfile profile = PressProfile.of(scenario(other).task());
        ReferenceTable reference = ReferenceTable.read(FOLDER.resolve("45-bare-worked.csv"));
        assertThat(differences(reference, profile)).anyMatch(line -> line.contains("force_friction"));
    }

    @Test
    void anotherAgeChangesEffortsAlone() throws IOException {
        String other = text("45-bare-worked").replace("age: 30 years", "age: 31 years");
        PressProfile profile = PressProfile.of(scenario(other).task());
        ReferenceTable reference = ReferenceTable.read(FOLDER.resolve("45-bare-worked.csv"));
        assertThat(differences(reference, profile))
                .allMatch(line -> line.contains("_effort"))
                .isNotEmpty();
    }

    private static String text(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name + ".yaml"));
    }

    private static PressScenario scenario(String text) {
        ScenarioReader.Result result = ScenarioReader.read(List.of(Source.of("scenario.yaml", text)));
        assertThat(result.problems().lines()).isEmpty();
        return result.press().orElseThrow();
    }

    private static List<String> differences(ReferenceTable reference, PressProfile profile) throws IOException {
        JsonNode printed = MAPPER.readTree(ResultJson.of(profile));
        List<String> found = new ArrayList<>();
        for (String column : reference.columns().subList(3, reference.columns().size())) {
            boolean words = column.equals("limiting_action");
            double allowed = words ? 0 : CLOSE * reference.largest(column);
            reference.eachRow(row -> {
                JsonNode ours = cell(printed, reference, row, column);
                String theirs = reference.cell(row, column);
                if (!same(ours, theirs, words, allowed)) {
                    found.add(column + " " + reference.rows().get(row).subList(0, 3) + ": " + ours + " for " + theirs);
                }
            });
        }
        return found;
    }

    private static boolean same(JsonNode ours, String theirs, boolean words, double allowed) {
        if (theirs.isEmpty() || ours.isNull()) {
            return theirs.isEmpty() && ours.isNull();
        }
        return words ? ours.asText().equals(theirs) : Math.abs(ours.asDouble() - Double.parseDouble(theirs)) <= allowed;
    }

    private static JsonNode cell(JsonNode printed, ReferenceTable reference, int row, String column) {
        for (JsonNode limb : printed.get("limbs")) {
            if (limb.get("side").asText().equals(reference.cell(row, "limb"))) {
                return limb.get("phases")
                        .get(reference.cell(row, "phase"))
                        .get(column)
                        .get(Integer.parseInt(reference.cell(row, "position")));
            }
        }
        throw new AssertionError("no limb " + reference.cell(row, "limb"));
    }
}
