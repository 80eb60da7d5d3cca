package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Our own worked example of rubber, from two independent derivations; not published. A₀ = 6e-5 m², L₀ = 0.60 m, at 0.90
 * and 1.20 m. Tolerance: half a unit of the last printed digit.
 */
class RubberWorkedExampleTest {
    private static final double HALF_A_DIGIT = 0.5e-6;

    @Test
    void mooneyRivlin() {
        Strand strand = Rubbers.of(Rubbers.MOONEY_RIVLIN).single();
        check(strand, 0.90, new double[] {3.800000, 21.955556, 47.703704});
        check(strand, 1.20, new double[] {12.240000, 33.600000, 33.000000});
    }

    @Test
    void ogden() {
        Strand strand = Rubbers.of(Rubbers.OGDEN).single();
        check(strand, 0.90, new double[] {2.631552, 15.389717, 34.384985});
        check(strand, 1.20, new double[] {8.584716, 23.809496, 24.332928});
    }

    private static void check(Strand strand, double length, double[] energyForceStiffness) {
        assertThat(strand.energy(length)).isCloseTo(energyForceStiffness[0], within(HALF_A_DIGIT));
        assertThat(strand.force(length)).isCloseTo(energyForceStiffness[1], within(HALF_A_DIGIT));
        assertThat(strand.stiffness(length)).isCloseTo(energyForceStiffness[2], within(HALF_A_DIGIT));
    }
}
