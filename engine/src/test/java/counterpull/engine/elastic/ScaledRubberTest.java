package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rubber that pulls so many times as hard, or is a little longer than was measured. */
class ScaledRubberTest {
    static Stream<ElasticLaw> laws() {
        return Rubbers.laws();
    }

    @ParameterizedTest
    @MethodSource("laws")
    void pullsSoManyTimesAsHardAtEveryLength(ElasticLaw law) {
        Rubber rubber = Rubbers.of(law);
        Rubber harder = rubber.times(1.3);
        for (double length = 0.55; length < 1.45; length += 0.07) {
            double force = rubber.single().force(length);
            double back = rubber.single().unloadingForce(length);
            assertThat(harder.single().force(length)).isCloseTo(1.3 * force, within(1e-9 * (1 + force)));
            assertThat(harder.single().unloadingForce(length)).isCloseTo(1.3 * back, within(1e-9 * (1 + back)));
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void aLongerPiecePullsTheSameAtTheSameStretch(ElasticLaw law) {
        Rubber rubber = Rubbers.of(law);
        double natural = rubber.naturalLength();
        Rubber longer = rubber.ofNaturalLength(1.02 * natural);
        assertThat(longer.maxStretch()).isCloseTo(rubber.maxStretch(), within(1e-12));
        for (double stretch = 0.9; stretch < rubber.maxStretch(); stretch += 0.11) {
            double force = rubber.single().force(stretch * natural);
            assertThat(longer.single().force(stretch * 1.02 * natural)).isCloseTo(force, within(1e-9 * (1 + force)));
        }
    }
}
