package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What somebody reads off a card and types back is the number that went in, to the last digit. */
class ExactTest {
    private static double typedBack(String words, Dimension dimension) {
        String shown = words.replaceAll(" \\(about.*", "");
        return ((Reading.Read) QuantityText.read(shown, dimension)).quantity().si();
    }

    @Test
    void numbersInEitherSystemComeBackInBoth() {
        Random random = new Random(20261125);
        for (int k = 0; k < 2000; k++) {
            Unit unit = k % 2 == 0 ? Unit.CENTIMETRE : Unit.INCH;
            double si = unit.toSi(random.nextInt(20000) / 100.0);
            for (Units units : Units.values()) {
                assertThat(typedBack(Exact.words(si, Dimension.LENGTH, units), Dimension.LENGTH))
                        .isEqualTo(si);
            }
        }
    }

    @Test
    void aNumberMeasuredInTheOtherSystemStaysAsMeasured() {
        assertThat(Exact.words(0.185, Dimension.LENGTH, Units.METRIC)).isEqualTo("18.5\u00A0cm");
        assertThat(Exact.words(0.185, Dimension.LENGTH, Units.IMPERIAL)).startsWith("18.5\u00A0cm (about 7.28");
        assertThat(Exact.words(Unit.INCH.toSi(7.25), Dimension.LENGTH, Units.IMPERIAL))
                .isEqualTo("7.25\u00A0in");
    }

    @Test
    void aComputedMarkLosesItsRoundingNoiseOnly() {
        assertThat(Exact.mark(0.2 + 3e-17 + 1e-16, Units.METRIC)).isEqualTo("20\u00A0cm");
        assertThat(Exact.mark(0.2005, Units.METRIC)).isEqualTo("20.05\u00A0cm");
    }
}
