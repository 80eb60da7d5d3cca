package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every stroke so many times as long: speeds fall by the factor, accelerations by its square, at every place. */
class SlowerTempoTest {
    private static final double[] FRACTION = {0, 0.05, 0.3, 0.5, 0.8, 1};

    static Stream<Tempo> tempos() {
        return Stream.of(
                new FullStop(new Tempo.Seconds(3, 1, 2, 0.5)),
                new Flowing(3, 2, Flowing.Turn.BOTTOM),
                new Flowing(3, 2, Flowing.Turn.BOTH),
                new Bounce(0.4, 0.3, 0.2));
    }

    @ParameterizedTest
    @MethodSource("tempos")
    void slowsEveryPlaceAlike(Tempo tempo) {
        Tempo slower = tempo.slower(1.25);
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            StrokeMotion fast = tempo.along(phase, FRACTION, 0.4);
            StrokeMotion slow = slower.along(phase, FRACTION, 0.4);
            for (int i = 0; i < FRACTION.length; i++) {
                assertThat(slow.speed(i)).isCloseTo(fast.speed(i) / 1.25, within(1e-9));
                assertThat(slow.acceleration(i)).isCloseTo(fast.acceleration(i) / 1.5625, within(1e-9));
            }
        }
        assertThat(slower.seconds(0.4).lifting())
                .isCloseTo(1.25 * tempo.seconds(0.4).lifting(), within(1e-9));
    }
}
