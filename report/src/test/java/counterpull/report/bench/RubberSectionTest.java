package counterpull.report.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.picture.Layer;
import counterpull.readings.ReadingsReader;
import counterpull.report.Heading;
import counterpull.report.table.UnitSet;
import counterpull.scenario.tree.Source;
import counterpull.scenario.units.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class RubberSectionTest {
    private static List<BenchSection> demo(Units units) throws IOException {
        String text = Files.readString(Path.of("..", "demo", "bench-rubber.yaml"));
        return BenchSections.of(
                ReadingsReader.read(Source.of("bench.yaml", text)).readings().orElseThrow(), units);
    }

    /** Every kind of space as a plain one. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Z}]+", " ");
    }

    @Test
    void theHeadlineGoesNoFartherThanTheTest() throws IOException {
        BenchSection piece = demo(Units.METRIC).get(0);
        assertThat(plain(piece.headline()))
                .contains("at its tested length of 108 cm")
                .contains("due for a test");
        assertThat(piece.sentences()).anyMatch(each -> plain(each).startsWith("Nothing is said past 108 cm"));
    }

    @Test
    void theCurveEndsWhereTheTestEndedAndTheRestIsHatched() throws IOException {
        BenchSection piece = demo(Units.METRIC).get(0);
        List<Layer> layers = piece.charts().get(0).chart().layers();
        Layer.Stretch hatched = (Layer.Stretch) layers.stream()
                .filter(Layer.Stretch.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(hatched.from()).isEqualTo(1.08);
        assertThat(hatched.words()).isEqualTo("not tested");
        layers.stream()
                .filter(Layer.Curve.class::isInstance)
                .map(layer -> ((Layer.Curve) layer).series())
                .forEach(series -> assertThat(series.x(series.size() - 1)).isEqualTo(1.08));
    }

    @Test
    void everyLawHasItsRowAndThoseThatCannotBeUsedTheirReason() throws IOException {
        BenchSection piece = demo(Units.METRIC).get(1);
        assertThat(piece.tables().get(0).rows()).isEqualTo(6);
        assertThat(piece.sentences())
                .anyMatch(each -> each.contains("Ogden, 3 terms: it takes 12 readings or more"))
                .anyMatch(each -> each.contains("2 strands together"));
    }

    @Test
    void aRefusedPieceHasNoNumbers() throws IOException {
        BenchSection piece = demo(Units.METRIC).get(2);
        assertThat(piece.headline()).isEmpty();
        assertThat(piece.charts()).isEmpty();
        String page = BenchPage.html(
                demo(Units.IMPERIAL), new Heading("bench.yaml", "", "", LocalDate.of(2026, 3, 2), "0"), Units.IMPERIAL);
        assertThat(plain(page)).contains("No answer can come of these readings").contains("10.279 ± 0.052 lbf");
    }

    @Test
    void theTerminalSaysItInTheReadersUnits() throws IOException {
        String text = plain(BenchText.of(demo(Units.IMPERIAL), UnitSet.IMPERIAL, 100));
        assertThat(text).contains("lbf").contains("42.5 in").doesNotContain("tested length of 108 cm");
    }
}
