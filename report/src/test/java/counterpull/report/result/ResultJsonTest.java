package counterpull.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The machine-readable result read back by a general reader. */
class ResultJsonTest {
    private static JsonNode read(Findings findings) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ResultJson.write(findings, out);
        return new ObjectMapper().readTree(out.toByteArray());
    }

    @Test
    void seriesAreTheProfilesNumbersToTheLastDigit() throws IOException {
        PressProfile profile = Demo.usual().first().profile();
        JsonNode limbs = read(Demo.usual()).at("/chosen/0/limbs");
        assertThat(limbs).hasSize(2);
        for (int k = 0; k < 2; k++) {
            for (Phase phase : Phase.values()) {
                JsonNode series = limbs.get(k).at("/phases/" + phase.words());
                for (int i = 0; i < profile.positions(); i++) {
                    assertThat(series.get("force").get(i).doubleValue()).isEqualTo(profile.force(phase, i));
                    double effort = profile.limbs().get(k).effort(Joint.HIP, phase, i);
                    JsonNode cell = series.get("hip_effort").get(i);
                    assertThat(cell.isNull()).as("null exactly where not known").isEqualTo(Double.isNaN(effort));
                }
            }
        }
    }

    @Test
    void saysItsFormatUnitsAndWhatEachSeriesIs() throws IOException {
        JsonNode root = read(Demo.usual());
        assertThat(root.get("format").asText()).isEqualTo("counterpull-result/1");
        assertThat(root.get("units").asText()).contains("SI");
        JsonNode columns = root.at("/chosen/0/columns");
        JsonNode series = root.at("/chosen/0/limbs/0/phases/held");
        series.fieldNames()
                .forEachRemaining(key -> assertThat(columns.has(key)).as(key).isTrue());
        assertThat(columns.at("/knee_flexion/unit").asText()).isEqualTo("rad");
        assertThat(root.at("/search/strategies")).hasSize(4);
        assertThat(root.at("/cautions").size()).isGreaterThan(3);
    }

    @Test
    void whatItDoesByItselfIsTheSledsOwn() throws IOException {
        PressProfile profile = Demo.usual().first().profile();
        JsonNode letGo = read(Demo.usual()).at("/chosen/0/let_go");
        JsonNode top = letGo.get("at_top");
        double travel = profile.plate(profile.positions() - 1) - profile.plate(0);
        assertThat(letGo.at("/at_bottom/ending").asText()).isEqualTo("on-the-stop");
        assertThat(letGo.at("/at_bottom/drop_m").doubleValue()).isZero();
        assertThat(top.get("mark_m").doubleValue()).isCloseTo(profile.mark(profile.positions() - 1), within(1e-12));
        assertThat(top.get("drop_m").doubleValue()).isCloseTo(travel, within(1e-9));
        double speed = top.get("arrival_speed_m_per_s").doubleValue();
        // carriage, counterweight and plates of the setup
        double mass = 40 + 5 + profile.loading().plates();
        assertThat(top.get("arrival_energy_J").doubleValue()).isCloseTo(mass * speed * speed / 2, within(1e-9));
        assertThat(letGo.get("largest_energy_error").doubleValue()).isLessThan(1e-6);
        assertThat(letGo.at("/hardest_arrival/arrival_energy_J").doubleValue())
                .isGreaterThanOrEqualTo(top.get("arrival_energy_J").doubleValue());
        assertThat(letGo.has("pulled_up")).isFalse();
    }

    @Test
    void namesArePassedThroughWhole() throws IOException {
        assertThat(read(Cases.nasty()).get("client").asText()).isEqualTo(Cases.NASTY);
    }

    @Test
    void aProfileAloneCanBeWritten() throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(ResultJson.of(Cases.oneLimb().first().profile()));
        assertThat(root.get("limbs")).hasSize(1);
        assertThat(root.get("positions").asInt()).isEqualTo(101);
    }
}
