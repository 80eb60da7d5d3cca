package counterpull.bench.machine;

import counterpull.bench.Coverage;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Made-up levers, read with noise: the intervals of moment, angle, friction and horn hold the truth as often as they say. */
class LeverCoverageTest {
    private static final double MOMENT = 22;
    private static final double OFFSET = Math.toRadians(12);
    private static final double FRICTION = 3;
    private static final double HORN = 0.42;
    private static final double HORN_OFFSET = Math.toRadians(-8);
    private static final double[] NOISES = {0.5, 2, 5};

    private record Plan(int angles, int times, double[] plates, double noise, boolean stated) {
        String words() {
            return angles + " angles x " + times + ", " + plates.length + " loads, noise " + noise
                    + (stated ? " stated" : "") + ": ";
        }
    }

    private static LeverBench read(Plan plan, Random random) {
        double arm = 0.5;
        double tape = 0.003;
        double taped = arm + tape * random.nextGaussian();
        List<LeverReading> readings = new ArrayList<>();
        for (int i = 0; i < plan.angles; i++) {
            double angle = Math.toRadians(-80 + 90.0 * i / (plan.angles - 1));
            for (double plates : plan.plates) {
                for (int k = 0; k < plan.times; k++) {
                    for (Way way : Way.values()) {
                        double torque = MOMENT * Math.cos(angle + OFFSET)
                                + plates * 9.80665 * HORN * Math.cos(angle + HORN_OFFSET)
                                + way.sense() * FRICTION;
                        readings.add(new LeverReading(
                                way, angle, plates, torque / arm + plan.noise * random.nextGaussian()));
                    }
                }
            }
        }
        LeverHold hold = new LeverHold(LeverHold.Turn.COUNTERCLOCKWISE, taped, tape);
        Noise scale = plan.stated ? new Noise.Stated(plan.noise) : new Noise.FromScatter();
        return new LeverBench("lever", hold, readings, Optional.empty(), scale);
    }

    private static void run(int angles, int times, double[] plates, boolean stated) {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            Plan plan = new Plan(angles, times, plates, noise, stated);
            for (int trial = 0; trial < Coverage.trials(); trial++) {
                LeverFound found = read(plan, Coverage.random(plan.words(), trial))
                        .answer()
                        .result()
                        .orElse(null);
                if (found == null) {
                    continue;
                }
                coverage.count(plan.words() + "moment", found.moment(), MOMENT);
                coverage.count(plan.words() + "offset", found.offset(), OFFSET);
                coverage.count(plan.words() + "friction", found.friction(), FRICTION);
                found.horn().ifPresent(horn -> {
                    coverage.count(plan.words() + "horn", horn.radius(), HORN);
                    coverage.count(plan.words() + "horn's offset", horn.offset(), HORN_OFFSET);
                });
            }
        }
        coverage.holds();
    }

    @Test
    void threeAnglesEmpty() {
        run(3, 1, new double[] {0}, false);
    }

    @Test
    void threeAnglesWithAScaleThatIsKnown() {
        run(3, 1, new double[] {0}, true);
    }

    @Test
    void fourAnglesWithPlates() {
        run(4, 2, new double[] {0, 10}, false);
    }
}
