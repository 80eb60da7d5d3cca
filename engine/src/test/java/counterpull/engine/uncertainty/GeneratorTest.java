package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The generator against its reference sequence and against what uniform and normal numbers must be. */
class GeneratorTest {
    private static final int MANY = 200_000;

    /** Reference output of xoshiro128++ from the state 1, 2, 3, 4, as implementations of it test themselves (from memory). */
    @Test
    void drawsTheReferenceSequence() {
        Generator generator = new Generator(new int[] {1, 2, 3, 4});
        long[] reference = {
            641,
            1573767,
            3222811527L,
            3517856514L,
            836907274,
            4247214768L,
            3867114732L,
            1355841295,
            495546011,
            621204420
        };
        for (long word : reference) {
            assertThat(Integer.toUnsignedLong(generator.next())).isEqualTo(word);
        }
    }

    @Test
    void theSameSeedAndStreamDrawTheSame() {
        Generator one = new Generator(7, 3);
        Generator other = new Generator(7, 3);
        for (int i = 0; i < 1000; i++) {
            assertThat(one.normal()).isEqualTo(other.normal());
        }
    }

    /** 200,000 numbers: the mean of independent products misses 0 by 0.0022 (one standard deviation); five of them are allowed. */
    @Test
    void streamsAndSeedsHaveNothingToDoWithEachOther() {
        int[][] pairs = {{1, 0, 1, 1}, {1, 0, 2, 0}, {1, 1, 2, 0}, {0, 0, 0, 1}};
        for (int[] pair : pairs) {
            Generator one = new Generator(pair[0], pair[1]);
            Generator other = new Generator(pair[2], pair[3]);
            double sum = 0;
            for (int i = 0; i < MANY; i++) {
                sum += one.normal() * other.normal();
            }
            assertThat(sum / MANY).isCloseTo(0, within(0.011));
        }
    }

    /** Five standard errors of each moment at 200,000 numbers. */
    @Test
    void normalNumbersHaveTheNormalMoments() {
        Generator generator = new Generator(11, 0);
        double[] moment = new double[5];
        int inside = 0;
        for (int i = 0; i < MANY; i++) {
            double z = generator.normal();
            for (int k = 1; k < 5; k++) {
                moment[k] += Math.pow(z, k) / MANY;
            }
            inside += Math.abs(z) < 1.6448536269514722 ? 1 : 0;
        }
        assertThat(moment[1]).isCloseTo(0, within(0.012));
        assertThat(moment[2]).isCloseTo(1, within(0.016));
        assertThat(moment[3]).isCloseTo(0, within(0.044));
        assertThat(moment[4]).isCloseTo(3, within(0.11));
        assertThat(inside / (double) MANY).as("nine of ten").isCloseTo(0.9, within(0.0034));
    }

    /** χ² of 100 equal bins: mean 99, standard deviation 14; 170 is five of them. */
    @Test
    void uniformNumbersFillTheirRangeEvenly() {
        Generator generator = new Generator(5, 9);
        int[] count = new int[100];
        for (int i = 0; i < MANY; i++) {
            double u = generator.uniform();
            assertThat(u).isGreaterThanOrEqualTo(0).isLessThan(1);
            count[(int) (u * 100)]++;
        }
        double chi = 0;
        for (int bin : count) {
            chi += Math.pow(bin - MANY / 100.0, 2) / (MANY / 100.0);
        }
        assertThat(chi).isBetween(40.0, 170.0);
    }
}
