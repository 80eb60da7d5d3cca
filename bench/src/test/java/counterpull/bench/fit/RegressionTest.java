package counterpull.bench.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Estimate;
import counterpull.engine.Refusal;
import org.junit.jupiter.api.Test;

class RegressionTest {
    private static final double[] AT = {0, 1, 2, 3};

    private static Regression line(double[] measured, Noise noise) {
        return Regression.of((p, i) -> p[0] + p[1] * AT[i], measured, new double[] {0, 0}, noise);
    }

    /** Handbook formulas of a straight line through four points, worked by hand: slope Sxy/Sxx, variance s²/Sxx. */
    @Test
    void aStraightLineIsTheHandbooks() {
        Fit fit =
                line(new double[] {1.1, 2.9, 5.2, 6.8}, new Noise.FromScatter()).fit();
        assertThat(fit.parameters()).containsExactly(new double[] {1.09, 1.94}, within(1e-9));
        double noise = Math.sqrt((0.01 * 0.01 + 0.13 * 0.13 + 0.23 * 0.23 + 0.11 * 0.11) / 2);
        assertThat(fit.noise()).isCloseTo(noise, within(1e-9));
        assertThat(fit.estimate(1).standardError()).isCloseTo(noise / Math.sqrt(5), within(1e-8));
        assertThat(fit.estimate(1).halfWidth())
                .as("4.3027 is the 97.5th percentile of t with two degrees of freedom (handbook tables; from memory)")
                .isCloseTo(4.3027 * noise / Math.sqrt(5), within(1e-4));
    }

    @Test
    void aStatedNoiseNeedsNoScatter() {
        Fit fit = Regression.of((p, i) -> p[0], new double[] {3}, new double[] {0}, new Noise.Stated(0.5))
                .fit();
        assertThat(fit.estimate(0).standardError()).isCloseTo(0.5, within(1e-9));
        assertThat(fit.estimate(0).high()).isCloseTo(3 + 1.959964 * 0.5, within(1e-6));
    }

    /** Two independent measurements of one number are combined by their weights. */
    @Test
    void whatIsKnownBeforehandIsWeighedIn() {
        Fit fit = Regression.of((p, i) -> p[0], new double[] {3}, new double[] {0}, new Noise.Stated(0.5))
                .known(0, 4, 1)
                .fit();
        assertThat(fit.estimate(0).value()).isCloseTo((3 / 0.25 + 4) / (1 / 0.25 + 1), within(1e-9));
        assertThat(fit.estimate(0).standardError()).isCloseTo(1 / Math.sqrt(5), within(1e-9));
    }

    @Test
    void aParameterPastItsLimitStandsAtItAndKeepsItsInterval() {
        Fit free =
                line(new double[] {5.2, 4.1, 2.9, 2.1}, new Noise.Stated(0.5)).fit();
        Fit fit = line(new double[] {5.2, 4.1, 2.9, 2.1}, new Noise.Stated(0.5))
                .atLeast(1, -0.5)
                .fit();
        assertThat(fit.estimate(1).value()).isEqualTo(-0.5);
        assertThat(fit.estimate(1).standing()).isEqualTo(Estimate.Standing.AT_LIMIT);
        assertThat(fit.estimate(1).low()).isEqualTo(-0.5);
        assertThat(fit.estimate(1).high())
                .isCloseTo(Math.max(-0.5, free.estimate(1).high()), within(1e-9));
        assertThat(fit.parameters()[0]).as("the rest is fitted with it held").isCloseTo(3.575 + 0.75, within(1e-9));
    }

    @Test
    void readingsThatTellNothingApartAreRefused() {
        assertThatThrownBy(() -> Regression.of(
                                (p, i) -> p[0] + p[1], new double[] {1, 2, 3}, new double[] {0, 0}, new Noise.Stated(1))
                        .fit())
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cannot tell");
        assertThatThrownBy(() ->
                        line(new double[] {1, 2, 3, 4}, new Noise.FromScatter()).spread(new double[] {1, 1, 0, 1}))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(
                        () -> Regression.of((p, i) -> p[0], new double[] {1}, new double[] {0}, new Noise.FromScatter())
                                .fit())
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("scatter");
    }
}
