package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How sure an effort is, against a second derivation in another language: a man of 34 years, 78 kg, 178 cm, one belt-fixed test of 205 N·m at
 * 60°, lifts an ankle cuff of 6 kg at 36 cm along the shank, seated, thigh level. Hardest held at 10°, where
 *
 * <pre>
 *   torque = g cos 10° (6 · 0.36 + m_shank · 0.433 L + m_foot L) + the foot's own = 32.794 N·m
 *   effort = torque / (published(10°) · exp(m(10°)))
 * </pre>
 *
 * with the Gaussian process written out anew and 200,000 draws of its own (the sizes of the uncertainties are the program's; its sums,
 * draws and differences were not looked at before).
 */
class SecondDerivationHowSureCrosscheckTest {
    private static final String WHO = """
            format: counterpull/1
            person:
              name: Nobody
              sex: male
              age: 34 years
              stature: 178 cm
              mass: 78 kg
              segment table: dempster-winter
              limbs:
                left:
                  range: {bottom: 90 deg, top: 10 deg}
                  ranges:
                    knee flexion: {bottom: 90 deg, top: 10 deg, pain free: 110 deg}
                  joint limits:
                    hip flexion: {from: -15 deg, to: 125 deg}
                    knee flexion: {from: 0 deg, to: 138 deg}
                    dorsiflexion: {from: -48 deg, to: 32 deg}
                  tests:
                    - {action: knee extension, angle: 60 deg, torque: 205 N·m, with: belt-fixed}
            """;

    private static final String CUFF = """
            format: counterpull/1
            exercise:
              kind: hinge
              limbs: left
              lift: knee extension
              plane: upright
              thigh direction: 0 deg
            resists:
              - dead weight:
                  name: ankle cuff
                  at: {on: shank, along: 36 cm}
                  chosen: 6 kg
            tempo:
              full stop: {lowering: 3 s, lifting: 2 s}
            """;

    @TempDir
    private Path folder;

    private JsonNode sure() throws IOException {
        Path who = Files.writeString(folder.resolve("who.yaml"), WHO);
        Path cuff = Files.writeString(folder.resolve("cuff.yaml"), CUFF);
        Ran ran = Ran.with("sure", who.toString(), cuff.toString(), "-f", "json", "--draws", "20000");
        assertThat(ran.code()).as(ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    /** 20,000 draws: a quantile is off by 0.5 % (5 and 95 %) and 0.25 % (50 %) of itself; three times that and 0.2 % for our own draws. */
    @Test
    void theBandIsTheSame() throws IOException {
        JsonNode largest = sure().path("largest_effort");
        assertThat(largest.path("low").asDouble()).isCloseTo(0.28787, within(0.017 * 0.28787));
        assertThat(largest.path("middle").asDouble()).isCloseTo(0.44902, within(0.0095 * 0.44902));
        assertThat(largest.path("high").asDouble()).isCloseTo(0.7012, within(0.017 * 0.7012));
    }

    /** Central differences of a closed form; ours has the curve itself, the program straight lines 2.5° apart: 1e-4 of an effort. */
    @Test
    void contributionsAreTheSame() throws IOException {
        JsonNode contributions = sure().path("contributions");
        double[][] expected = {
            {0.967372, Double.NaN, Double.NaN},
            {0.026085, 0.430327, 0.469626},
            {0.0041458, 0.442139, 0.457815},
            {0.0022115, 0.444252, 0.455702},
            {0.00018092, 0.448339, 0.451614}
        };
        for (int i = 0; i < expected.length; i++) {
            JsonNode one = contributions.get(i);
            String what = one.path("input").asText();
            assertThat(one.path("share").asDouble()).as(what).isCloseTo(expected[i][0], within(2e-5));
            if (!Double.isNaN(expected[i][1])) {
                assertThat(one.path("low").asDouble()).as(what).isCloseTo(expected[i][1], within(5e-5));
                assertThat(one.path("high").asDouble()).as(what).isCloseTo(expected[i][2], within(5e-5));
            }
        }
    }

    /** Our own posterior: k(10°, 5°)² / (k(5°, 5°) + 0.08²) = 0.066553 off 0.073195; 5° is best of the whole steps. */
    @Test
    void theNextReadingTakesAsMuch() throws IOException {
        JsonNode first = sure().path("next_readings").get(0);
        assertThat(first.path("reading").asText()).contains("left knee extension at 5°");
        assertThat(first.path("before").asDouble()).isCloseTo(0.270546, within(1e-4));
        assertThat(first.path("after").asDouble()).isCloseTo(0.081498, within(2e-4));
    }
}
