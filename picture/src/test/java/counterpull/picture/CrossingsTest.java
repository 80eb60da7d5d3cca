package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static Series line(double from, double to, double at, double slope) {
        double[] x = new double[41];
        double[] y = new double[41];
        for (int i = 0; i < 41; i++) {
            x[i] = from + (to - from) * i / 40;
            y[i] = slope * (x[i] - at);
        }
        return new Series(x, y);
    }

    @Test
    void twoStraightLinesCrossWhereTheyMeet() {
        for (double at : new double[] {0.1, 0.33, 0.5, 0.77}) {
            // the second one is travelled the other way and over another range
            List<Crossing> found =
                    new Crossings(line(0, 1, at, 2), line(1.5, -0.2, at, -1)).between("steep", "falling");
            assertThat(found).hasSize(1);
            // rounding of one interpolation
            assertThat(found.get(0).angle()).isCloseTo(at, within(1e-12));
            assertThat(found.get(0).first()).isEqualTo("steep");
        }
    }

    @Test
    void theSameCurveTwiceDoesNotCross() {
        assertThat(new Crossings(line(0, 1, 0.4, 2), line(0, 1, 0.4, 2)).between("a", "b"))
                .isEmpty();
    }

    @Test
    void aGapIsNotCrossed() {
        double[] x = {0, 1, 2, 3};
        Series broken = new Series(x, new double[] {-1, Double.NaN, Double.NaN, 1});
        assertThat(new Crossings(broken, new Series(x, new double[4])).between("a", "b"))
                .isEmpty();
    }
}
