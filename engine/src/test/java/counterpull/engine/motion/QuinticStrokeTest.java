package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** When a stroke is where: the answer put back in gives the place, whatever the guess it started from. */
class QuinticStrokeTest {
    private static final Random RANDOM = new Random(1985);

    private static double between(double low, double high) {
        return low + (high - low) * RANDOM.nextDouble();
    }

    private static QuinticStroke stroke() {
        double travel = between(0.1, 0.6);
        double seconds = between(0.5, 5);
        // up to the largest turn that never goes back, and as often none
        double most = 20 * travel / (seconds * seconds);
        double bottom = RANDOM.nextBoolean() ? 0 : between(0, most);
        return RANDOM.nextBoolean()
                ? new QuinticStroke(travel, seconds, bottom, 0)
                : new QuinticStroke(travel, seconds, 0, -bottom);
    }

    @Test
    void thePlaceAtTheTimeOfAPlaceIsThatPlace() {
        for (int k = 0; k < 20_000; k++) {
            QuinticStroke stroke = stroke();
            double fraction = RANDOM.nextInt(20) == 0 ? 0.5 : between(0, 1);
            double time = stroke.timeAt(fraction, between(-0.5, 1.5));
            // the place, to the rounding of a polynomial of six terms
            assertThat(stroke.position(time))
                    .as("%s at %s", stroke, fraction)
                    .isCloseTo(fraction * stroke.travel(), within(4e-15 * stroke.travel()));
        }
    }

    @Test
    void endsAreExact() {
        QuinticStroke stroke = new QuinticStroke(0.4, 2, 0, 0);
        assertThat(stroke.timeAt(0)).isZero();
        assertThat(stroke.timeAt(1)).isEqualTo(1);
        assertThat(stroke.timeAt(0.5)).isEqualTo(0.5);
    }

    /** Speeds and accelerations of a whole range are those of its places one by one. */
    @Test
    void aRangeIsItsPlaces() {
        for (int k = 0; k < 200; k++) {
            QuinticStroke stroke = stroke();
            double[] fraction = RANDOM.doubles(50, 0, 1).sorted().toArray();
            StrokeMotion range = StrokeMotion.of(stroke, Phase.LOWERING, fraction);
            for (int i = 0; i < fraction.length; i++) {
                double time = stroke.timeAt(fraction[i]);
                double size = stroke.travel() / (stroke.seconds() * stroke.seconds());
                assertThat(range.speed(i)).isCloseTo(-stroke.speed(time), within(1e-11 * size * stroke.seconds()));
                // jerk × what rounding of the place leaves of the time, most where the stroke is slow
                assertThat(range.acceleration(i)).isCloseTo(stroke.acceleration(time), within(1e-9 * size));
            }
        }
    }
}
