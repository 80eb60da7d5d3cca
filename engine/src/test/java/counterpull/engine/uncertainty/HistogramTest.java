package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Counting in bins against sorting everything. */
class HistogramTest {
    /** A bin is at most 1.6 % wide, so a quantile misses the sorted value by no more. */
    @Test
    void quantilesAreThoseOfTheSortedValues() {
        Generator generator = new Generator(3, 0);
        Histogram histogram = new Histogram(2);
        double[] values = new double[5001];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.exp(generator.normal() - 0.5);
            histogram.add(1, values[i]);
        }
        Arrays.sort(values);
        for (double share : new double[] {0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99}) {
            double sorted = values[(int) (share * 5000)];
            assertThat(histogram.quantile(1, share)).isCloseTo(sorted, within(0.017 * sorted));
        }
        assertThat(histogram.quantile(1, 0)).isEqualTo(values[0]);
        assertThat(histogram.quantile(1, 1)).isEqualTo(values[5000]);
        assertThat(histogram.quantile(0, 0.5)).as("nothing counted").isNaN();
    }

    @Test
    void partsAddUpToTheWhole() {
        Generator generator = new Generator(4, 0);
        Histogram whole = new Histogram(1);
        Histogram one = new Histogram(1);
        Histogram other = new Histogram(1);
        for (int i = 0; i < 999; i++) {
            double value = generator.uniform();
            whole.add(0, value);
            (i % 4 == 0 ? one : other).add(0, value);
        }
        other.add(one);
        for (double share = 0; share <= 1; share += 0.05) {
            assertThat(other.quantile(0, share)).isEqualTo(whole.quantile(0, share));
        }
        assertThat(other.known(0)).isEqualTo(999);
    }

    /** Zero, next to nothing, and far more than there is, infinite strength or none: all are counted, none is lost. */
    @Test
    void whatLiesOutsideTheBinsKeepsItsEnds() {
        Histogram histogram = new Histogram(1);
        for (double value : new double[] {0, 1e-9, 0.5, 500, 1e6}) {
            histogram.add(0, value);
        }
        assertThat(histogram.quantile(0, 0)).isZero();
        assertThat(histogram.quantile(0, 0.5)).isBetween(0.49, 0.51);
        assertThat(histogram.quantile(0, 1)).isEqualTo(1e6);
    }
}
