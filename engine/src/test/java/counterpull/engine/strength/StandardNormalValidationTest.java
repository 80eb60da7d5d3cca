package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

class StandardNormalValidationTest {
    private static final String SECTION = "The normal distribution";
    private static final String MARSAGLIA = "Marsaglia 2004, J Stat Softw 11(4), the true values; looked up";
    private static final String TABLE_1 =
            "Abramowitz and Stegun 1964, Table 26.1; from memory, the digits confirmed by arithmetic to 30 places";
    private static final String TABLE_2 =
            "Abramowitz and Stegun 1964, Table 26.2; from memory, the digits confirmed by arithmetic to 30 places";

    private static Published row(String quantity) {
        return Published.of(quantity, "").section(SECTION);
    }

    private static void below(double x, double published, String source) {
        row("share below " + x)
                .source(source)
                .value(published)
                .ours(StandardNormal.below(x))
                .withinRelative(2e-15, "a few roundings of the last digit of a double");
    }

    @Test
    void theShareBelowIsThePublishedOne() {
        below(0.1, 0.539827837277028981, MARSAGLIA);
        below(1.2, 0.884930329778291731, MARSAGLIA);
        below(-1.1, 0.1356660609463826751, MARSAGLIA);
        below(0.5, 0.691462461274013, TABLE_1);
        below(1, 0.841344746068543, TABLE_1);
        below(2, 0.977249868051821, TABLE_1);
        below(3, 0.998650101968370, TABLE_1);
    }

    private static void tail(int x, double published) {
        row("−log₁₀ of the share above " + x)
                .source(TABLE_2)
                .value(published)
                .ours(-Math.log10(StandardNormal.below(-x)))
                .within(5.1e-6, "published to five decimals");
    }

    @Test
    void theFarTailIsThePublishedOne() {
        tail(5, 6.54265);
        tail(6, 9.00586);
        tail(8, 15.20614);
        tail(10, 23.11805);
        tail(15, 50.43522);
        tail(20, 88.56010);
        tail(25, 137.51475);
        tail(30, 197.30921);
    }

    /** crosscheck: the share above x by Simpson's rule over the density ratio, exp(−xt − t²/2) from 0. */
    @Test
    void hazardAgreesWithIntegration() {
        for (double x = -6; x < 60; x += 0.173) {
            assertThat(StandardNormal.hazard(x) * above(x, 0))
                    .as("hazard at %s; Simpson's rule is good to 1e-13 of it", x)
                    .isCloseTo(1, within(1e-12));
        }
    }

    /** crosscheck: mean distance above x, by the same rule. */
    @Test
    void theDistanceBeyondAgreesWithIntegration() {
        for (double x = -6; x < 60; x += 0.173) {
            assertThat(StandardNormal.beyond(x) / (above(x, 1) / above(x, 0)))
                    .as("at %s", x)
                    .isCloseTo(1, within(1e-12));
        }
    }

    /** Where series and fraction meet, they must agree: the fraction is least good there. */
    @Test
    void seriesAndFractionMeet() {
        double step = 1e-12;
        assertThat(StandardNormal.below(-2 - step) / StandardNormal.below(-2))
                .as("the density times the step is 3e-12 of the share; the rest is rounding")
                .isCloseTo(1, within(4e-12));
        assertThat(StandardNormal.beyond(2 + step)).isCloseTo(StandardNormal.beyond(2), within(3e-12));
    }

    @Test
    void theEndsAreWhatTheyTendTo() {
        assertThat(StandardNormal.below(-50)).isZero();
        assertThat(StandardNormal.below(50)).isOne();
        assertThat(StandardNormal.below(0)).isEqualTo(0.5);
        assertThat(StandardNormal.hazard(-50)).isZero();
        assertThat(StandardNormal.hazard(1e9)).isEqualTo(1e9);
        assertThat(StandardNormal.beyond(1e8)).isCloseTo(1e-8, within(1e-22));
        assertThat(StandardNormal.beyond(-50)).isEqualTo(50);
    }

    /** ∫ tᵖ exp(−xt − t²/2) dt from 0: what lies above x, its moment about x, over the density at x. */
    private static double above(double x, int power) {
        double to = x < 3 ? 12 - x : 40 / x;
        int steps = 20_000;
        double step = to / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double t = i * step;
            double weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * Math.pow(t, power) * Math.exp(-x * t - t * t / 2);
        }
        return sum * step / 3;
    }
}
