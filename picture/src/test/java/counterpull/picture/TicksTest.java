package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TicksTest {
    @Test
    void coverTheirIntervalWithNoMoreThanAllowed() {
        Random random = new Random(7);
        for (int k = 0; k < 5000; k++) {
            double low = -Math.pow(10, 6 * random.nextDouble() - 2) * random.nextDouble();
            double high = low + Math.pow(10, 6 * random.nextDouble() - 2) + 1e-3;
            int most = 3 + random.nextInt(10);
            Ticks ticks = Ticks.covering(low, high, most);
            // rounding: a value within a billionth of a step of a tick is that tick
            double rounding = 2e-9 * ticks.step();
            assertThat(ticks.low()).isLessThanOrEqualTo(low + rounding);
            assertThat(ticks.high()).isGreaterThanOrEqualTo(high - rounding);
            assertThat(ticks.count()).isLessThanOrEqualTo(most).isGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void stepsAreOneTwoOrFiveTimesAPowerOfTen() {
        Random random = new Random(8);
        for (int k = 0; k < 2000; k++) {
            double step = Ticks.covering(0, Math.pow(10, 8 * random.nextDouble() - 3), 7)
                    .step();
            double lead = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
            double nearest = lead < 1.5 ? 1 : lead < 3.5 ? 2 : 5;
            // powers of ten are computed, so the last digits may differ
            assertThat(lead).isCloseTo(nearest, within(1e-9));
        }
    }

    @Test
    void theFinestStepThatFitsIsTaken() {
        assertThat(Ticks.covering(0, 85, 10).step()).isEqualTo(10);
        assertThat(Ticks.covering(0, 85, 6).step()).isEqualTo(20);
        assertThat(Ticks.covering(0, 85, 4).step()).isEqualTo(50);
    }

    @Test
    void insideAnIntervalNoTickSticksOut() {
        Ticks ticks = Ticks.within(10, 90, 9);
        assertThat(ticks.low()).isEqualTo(10);
        assertThat(ticks.high()).isEqualTo(90);
        Ticks narrow = Ticks.within(67.4, 92.3, 6);
        assertThat(narrow.low()).isGreaterThanOrEqualTo(67.4);
        assertThat(narrow.high()).isLessThanOrEqualTo(92.3);
    }

    @Test
    void labelsHaveTheDecimalsTheyNeed() {
        assertThat(Ticks.covering(0, 1, 6).label(1)).isEqualTo("0.2");
        assertThat(Ticks.covering(-0.1, 0.1, 5).label(0)).isEqualTo("−0.10");
        assertThat(Ticks.covering(0, 400, 5).label(2)).isEqualTo("200");
    }
}
