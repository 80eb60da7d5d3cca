package counterpull.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StepsTest {
    private static final double POUND = 4.4482216152605;

    private static double[] rounded(double... readings) {
        return Arrays.stream(readings)
                .map(each -> Math.round(each / POUND) * POUND)
                .toArray();
    }

    /** 61, 65, 91, 98 lb: whatever the unit was, its step shows. */
    @Test
    void theStepOfAScaleInPoundsIsFoundInNewtons() {
        assertThat(Steps.of(rounded(270, 290, 405, 436)))
                .as("rounding of sixteen digits")
                .isCloseTo(POUND, within(1e-9));
    }

    @Test
    void numbersWithoutAStepHaveNone() {
        Random random = new Random(1);
        for (int trial = 0; trial < 100; trial++) {
            assertThat(Steps.of(random.doubles(5, 100, 500).toArray())).isZero();
        }
    }

    @Test
    void scatterThatIsWiderThanTheStepIsLeftAlone() {
        double[] readings = rounded(270, 290, 405, 436);
        assertThat(Steps.coarse("pull", Kind.FORCE, readings, POUND)).isEmpty();
        assertThat(Steps.coarse("pull", Kind.FORCE, readings, 0.1 * POUND))
                .hasValueSatisfying(remark -> assertThat(remark.inSi()).contains("4.4482 N", "1.2841 N or more"));
    }

    @Test
    void oneNumberAndThreeReadingsShowNoStep() {
        assertThat(Steps.of(new double[] {100, 100, 100, 100})).isZero();
        assertThat(Steps.of(new double[] {100, 200, 300})).isZero();
        assertThat(Steps.of(new double[0])).isZero();
        assertThat(Steps.of(new double[5])).isZero();
    }
}
