package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A swing without loss that stands still just when the time that it is followed for is over. */
class TimeIsUpTest {
    /** A spring's machine: half a swing in a stated time. */
    private static LoneMachine spring(double half) {
        double perMetre = Math.PI * Math.PI / (half * half);
        return new Wrapped(new Bead(1, 0)) {
            @Override
            public double weight(double x) {
                return -perMetre * x;
            }

            @Override
            public double weightEnergy(double x) {
                return perMetre * x * x / 2;
            }

            @Override
            public Ends ends() {
                return new Ends(-10, Ends.Bottom.NOTHING, 10);
            }
        };
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4, 5, 10, 20, 0.5, 0.8, 2.5, 1.25, 0.4})
    void itIsStillSwinging(double half) {
        Outcome outcome = LetGo.of(spring(half), Release.held(0.3));
        assertThat(outcome.ending()).isEqualTo(Ending.STILL_SWINGING);
        assertThat(outcome.energy().closes()).isTrue();
    }
}
