package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every law of rubber must keep, and what every strand made of it. */
class ElasticContractTest {
    /** Step of the central differences, m: their error is then below 1e-7 of the value, as is that of rounding. */
    private static final double STEP = 1e-5;

    static Stream<ElasticLaw> laws() {
        return Rubbers.laws();
    }

    @ParameterizedTest
    @MethodSource("laws")
    void nothingAtRestOrSlack(ElasticLaw law) {
        for (double stretch : new double[] {-0.5, 0, 0.4, 0.999999, 1}) {
            assertThat(law.tension(stretch)).as("tension at %s", stretch).isZero();
            assertThat(law.energy(stretch)).as("energy at %s", stretch).isZero();
        }
        assertThat(law.slope(0.999999)).isZero();
        assertThat(law.slope(1)).as("it begins to pull at once").isPositive();
    }

    @ParameterizedTest
    @MethodSource("laws")
    void pullsAsSoonAsStretchedAndWithoutAJump(ElasticLaw law) {
        assertThat(law.tension(1 + 1e-9)).isPositive().isCloseTo(law.slope(1) * 1e-9, within(1e-12));
        assertThat(law.energy(1 + 1e-6)).isCloseTo(law.slope(1) * 1e-12 / 2, within(1e-15));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void forceIsTheSlopeOfEnergy(ElasticLaw law) {
        Strand strand = Rubbers.of(law).single();
        for (double length = 0.601; length < 1.499; length += 0.0137) {
            double difference = (strand.energy(length + STEP) - strand.energy(length - STEP)) / (2 * STEP);
            assertThat(difference)
                    .as("dE/dL at %s m", length)
                    .isCloseTo(strand.force(length), within(1e-6 * (1 + strand.force(length))));
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void stiffnessIsTheSlopeOfForce(ElasticLaw law) {
        Strand strand = Rubbers.of(law).single();
        for (double length = 0.601; length < 1.499; length += 0.0137) {
            double difference = (strand.force(length + STEP) - strand.force(length - STEP)) / (2 * STEP);
            // 1e-4: a bench curve's stiffness bends at its readings, and a difference that straddles one sees both
            // sides.
            assertThat(difference)
                    .as("dF/dL at %s m", length)
                    .isCloseTo(strand.stiffness(length), within(1e-4 * (1 + strand.stiffness(length))));
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void neverFallsWithinWhatWasTested(ElasticLaw law) {
        double before = 0;
        for (double stretch = 1; stretch <= 2.5; stretch += 0.001) {
            assertThat(law.tension(stretch)).as("tension at %s", stretch).isGreaterThanOrEqualTo(before);
            before = law.tension(stretch);
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void givesBackNoMoreThanWasPutIn(ElasticLaw law) {
        Strand strand = Rubbers.of(law, new LossFraction(0.12)).single();
        for (double length = 0.6; length < 1.5; length += 0.01) {
            assertThat(strand.unloadingForce(length)).isLessThanOrEqualTo(strand.force(length));
            assertThat(strand.energyReturned(length)).isLessThanOrEqualTo(strand.energy(length));
        }
        assertThat(strand.energyReturned(1.5)).isCloseTo(0.88 * strand.energy(1.5), within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void saysNothingAboutWhatIsNoNumber(ElasticLaw law) {
        assertThat(law.tension(Double.NaN)).isNaN();
        assertThat(law.slope(Double.NaN)).isNaN();
        assertThat(law.energy(Double.NaN)).isNaN();
    }

    @ParameterizedTest
    @MethodSource("laws")
    void saysItselfInOneLine(ElasticLaw law) {
        assertThat(law.formula()).isNotBlank().doesNotContain("\n").doesNotContain("NaN");
    }
}
