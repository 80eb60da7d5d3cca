package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Why a floor is weighed as it is: five efforts of one person at one angle, each stopped at 50 to 100 % of what they have
 * and read with a noise of 15 %. The usual one-sided weight Φ((f − y)/sd) calls people too strong; the exact posterior is
 * taken here with either weight by a sum over a grid, so that nothing else differs.
 */
class FloorWeightTest {
    private static final int PEOPLE = 2000;
    private static final int REPEATS = 5;
    private static final double SPREAD = 0.29;
    private static final double NOISE = 0.15;
    private static final double STEP = 0.005;

    /** Shares of people inside mean ± 1.96 standard deviations, and below it. */
    private record Held(double inside, double below) {}

    private static Held simulated(DoubleUnaryOperator logWeight) {
        Random random = new Random(1987);
        int inside = 0;
        int below = 0;
        for (int person = 0; person < PEOPLE; person++) {
            double has = SPREAD * random.nextGaussian();
            double[] floors = new double[REPEATS];
            for (int i = 0; i < REPEATS; i++) {
                floors[i] = has + Math.log(0.5 + 0.5 * random.nextDouble()) + NOISE * random.nextGaussian();
            }
            double[] moments = moments(floors, logWeight);
            double half = 1.96 * Math.sqrt(moments[1]);
            inside += Math.abs(has - moments[0]) <= half ? 1 : 0;
            below += has < moments[0] - half ? 1 : 0;
        }
        return new Held(inside / (double) PEOPLE, below / (double) PEOPLE);
    }

    private static double[] moments(double[] floors, DoubleUnaryOperator logWeight) {
        double mass = 0;
        double first = 0;
        double second = 0;
        for (double f = -1.7; f <= 2.2; f += STEP) {
            double log = -f * f / (2 * SPREAD * SPREAD);
            for (double floor : floors) {
                log += logWeight.applyAsDouble((f - floor) / NOISE);
            }
            double weight = Math.exp(log);
            mass += weight;
            first += weight * f;
            second += weight * f * f;
        }
        double mean = first / mass;
        return new double[] {mean, second / mass - mean * mean};
    }

    @Test
    void theUsualWeightCallsPeopleTooStrongAndOursDoesNot() {
        Held ours = simulated(z -> -Math.min(z, 0) * Math.min(z, 0) / 2);
        Held usual = simulated(z -> Math.log(StandardNormal.below(Math.max(-37, z))));
        assertThat(ours.inside()).as("ours: %s", ours).isGreaterThanOrEqualTo(0.93);
        assertThat(ours.below()).as("ours: %s", ours).isLessThan(0.05);
        assertThat(usual.inside()).as("usual: %s", usual).isLessThan(0.9);
        assertThat(usual.below()).as("usual: %s", usual).isGreaterThan(0.1);
    }
}
