package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StrandTest {
    @Test
    void aDoubledLinearPieceIsFourTimesAsStiff() {
        Rubber rubber = Rubbers.of(Rubbers.LINEAR);
        Strand half = rubber.doubled();
        assertThat(half.naturalLength()).isEqualTo(0.30);
        assertThat(rubber.single().stiffness(0.9)).isCloseTo(150, within(1e-12));
        assertThat(2 * half.stiffness(0.45)).as("two strands").isCloseTo(4 * 150, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("counterpull.engine.elastic.Rubbers#laws")
    void aDoubledPieceIsTwoStrandsOfHalfTheLength(ElasticLaw law) {
        Rubber rubber = Rubbers.of(law);
        Strand whole = rubber.single();
        Strand half = rubber.doubled();
        for (double length = 0.6; length < 1.5; length += 0.05) {
            // Same stretch, so the same pull from each strand, and the same energy in the piece.
            assertThat(half.force(length / 2)).isCloseTo(whole.force(length), within(1e-12));
            assertThat(2 * half.energy(length / 2)).isCloseTo(whole.energy(length), within(1e-12));
            assertThat(half.stiffness(length / 2)).isCloseTo(2 * whole.stiffness(length), within(1e-9));
        }
        assertThat(half.maxLength()).isCloseTo(whole.maxLength() / 2, within(1e-15));
    }

    @Test
    void hardwareIsTakenOffBeforeDoubling() {
        Rubber rubber = new Rubber("hook", 1.20, Rubbers.LINEAR, LossFraction.NONE, 2.4, 0, 0.04);
        assertThat(rubber.doubled().naturalLength()).isCloseTo(0.58, within(1e-15));
        assertThat(rubber.single().naturalLength()).isEqualTo(1.20);
    }

    @Test
    void refusesPastTheTestedLengthWithLengthAndLimit() {
        Strand strand = Rubbers.of(Rubbers.OGDEN).single();
        assertThat(strand.force(strand.maxLength()))
                .as("the limit itself is tested")
                .isPositive();
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> strand.force(1.51));
        assertThat(refusal.fault()).isEqualTo(Fault.PAST_TESTED_LENGTH);
        assertThat(refusal.value()).isEqualTo(1.51);
        assertThat(refusal.limit()).isCloseTo(1.5, within(1e-15));
        assertThat(refusal.unit()).isEqualTo("m");
        assertThat(refusal)
                .hasMessageContaining("1.51 m")
                .hasMessageContaining("1.5 m")
                .hasMessageContaining("test");
    }

    @Test
    void everySinglePointAnswerRefusesAlike() {
        Strand strand = Rubbers.of(Rubbers.BENCH).single();
        assertThat(fault(() -> strand.unloadingForce(1.6))).isEqualTo(Fault.PAST_TESTED_LENGTH);
        assertThat(fault(() -> strand.stiffness(1.6))).isEqualTo(Fault.PAST_TESTED_LENGTH);
        assertThat(fault(() -> strand.energy(1.6))).isEqualTo(Fault.PAST_TESTED_LENGTH);
        assertThat(fault(() -> strand.energyReturned(1.6))).isEqualTo(Fault.PAST_TESTED_LENGTH);
        assertThat(fault(() -> strand.force(Double.NaN))).isEqualTo(Fault.NOT_FINITE);
        assertThat(fault(() -> strand.force(Double.POSITIVE_INFINITY))).isEqualTo(Fault.NOT_FINITE);
    }

    @ParameterizedTest
    @MethodSource("counterpull.engine.elastic.Rubbers#laws")
    void theSeriesAgreesWithThePointsAndMarksWhatIsPastTested(ElasticLaw law) {
        Strand strand = Rubbers.of(law).single();
        double[] lengths = {-0.1, 0.5, 0.6, 0.8, 1.1, strand.maxLength(), 1.5001, Double.NaN};
        double[] lengthening = new double[lengths.length];
        double[] shortening = new double[lengths.length];
        strand.forces(lengths, lengthening, shortening);
        for (int i = 0; i < 6; i++) {
            assertThat(lengthening[i]).isEqualTo(strand.force(lengths[i]));
            assertThat(shortening[i]).isEqualTo(strand.unloadingForce(lengths[i]));
        }
        assertThat(lengthening[6]).isNaN();
        assertThat(shortening[6]).isNaN();
        assertThat(lengthening[7]).isNaN();
        assertThat(shortening[7]).isNaN();
    }

    @Test
    void theSeriesDemandsRoom() {
        Strand strand = Rubbers.of(Rubbers.LINEAR).single();
        assertThat(fault(() -> strand.forces(new double[3], new double[3], new double[2])))
                .isEqualTo(Fault.OUTSIDE_LIMITS);
    }

    @Test
    void refusesAStrandWithoutLength() {
        assertThat(fault(() -> new Strand(Rubbers.of(Rubbers.LINEAR), 0))).isEqualTo(Fault.MUST_BE_POSITIVE);
    }

    private static Fault fault(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return catchThrowableOfType(Refusal.class, call).fault();
    }
}
