package counterpull.bench.repetitions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class NormalCrosscheckTest {
    @Test
    void isTheLibrarysErrorFunction() {
        for (double z = -30; z <= 9; z += 0.0371) {
            double library = Erf.erfc(-z / Math.sqrt(2)) / 2;
            assertThat(Normal.below(z))
                    .as("below %s: 15 digits, and eight of a tail", z)
                    .isCloseTo(library, within(1e-15 + 1e-8 * library));
        }
    }
}
