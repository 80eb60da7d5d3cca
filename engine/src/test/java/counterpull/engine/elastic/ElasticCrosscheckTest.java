package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random rubbers, seeded: the stored energy by its closed form and by adding up force times way. */
class ElasticCrosscheckTest {
    private static final int RUBBERS = 200;

    @Test
    void energyOfClosedFormsIsTheWorkDone() {
        Random random = new Random(20261125);
        for (int k = 0; k < RUBBERS; k++) {
            ElasticLaw law = k % 2 == 0 ? mooneyRivlin(random) : ogden(random);
            double stretch = 1.05 + 4 * random.nextDouble();
            // Simpson with 400 steps of a smooth force errs by far less than 1e-8 of the work.
            double work = simpson(law, 1, stretch, 400);
            assertThat(law.energy(stretch)).as("%s to %s", law, stretch).isCloseTo(work, within(1e-8 * work));
        }
    }

    /** Simpson's rule is exact for a cubic, so one step for each piece leaves rounding alone. */
    @Test
    void energyOfABenchCurveIsTheWorkDone() {
        Random random = new Random(7);
        for (int k = 0; k < RUBBERS; k++) {
            List<BenchReading> readings = readings(random);
            BenchCurve curve = new BenchCurve(0.5, readings);
            double work = 0;
            double from = 1;
            for (BenchReading reading : readings) {
                double to = reading.length() / 0.5;
                work += simpson(curve, from, to, 2);
                from = to;
            }
            assertThat(curve.energy(from)).isCloseTo(work, within(1e-10 * work));
        }
    }

    @Test
    void aBenchCurveThroughRandomReadingsNeverFalls() {
        Random random = new Random(11);
        for (int k = 0; k < RUBBERS; k++) {
            BenchCurve curve = new BenchCurve(0.5, readings(random));
            double before = 0;
            for (int i = 1; i <= 500; i++) {
                double force = curve.tension(1 + (curve.largestStretch() - 1) * i / 500);
                assertThat(force).isGreaterThanOrEqualTo(before - 1e-12);
                before = force;
            }
        }
    }

    /** A control: with the mean of the neighbouring secants alone the flat piece would bulge, so the check can fail. */
    @Test
    void withoutTheLimitTheCurveWouldBulge() {
        double slopeBefore = (100.0 + 0) / 2;
        double slopeAfter = (0 + 300.0) / 2;
        double halfWay = 10 + 0.1 * (slopeBefore - slopeAfter) / 8;
        assertThat(halfWay).as("half way along the flat piece").isLessThan(9);
        BenchCurve curve = new BenchCurve(
                1, List.of(new BenchReading(1.1, 10), new BenchReading(1.2, 10), new BenchReading(1.3, 40)));
        assertThat(curve.tension(1.15)).isCloseTo(10, within(1e-12));
    }

    private static ElasticLaw mooneyRivlin(Random random) {
        return new MooneyRivlin(
                1e-5 + 1e-4 * random.nextDouble(), 3e5 * random.nextDouble(), 3e5 * random.nextDouble());
    }

    private static ElasticLaw ogden(Random random) {
        double[] mu = {1e6 * random.nextDouble() + 1, -2e4 * random.nextDouble() - 1};
        double[] alpha = {0.5 + 4 * random.nextDouble(), -0.5 - 3 * random.nextDouble()};
        return new Ogden(1e-5 + 1e-4 * random.nextDouble(), mu, alpha);
    }

    private static List<BenchReading> readings(Random random) {
        List<BenchReading> readings = new ArrayList<>();
        double length = 0.5;
        double force = 0;
        for (int i = 0; i < 8; i++) {
            length += 0.01 + 0.2 * random.nextDouble();
            force += random.nextInt(4) == 0 ? 0 : 20 * random.nextDouble();
            readings.add(new BenchReading(length, force));
        }
        readings.add(new BenchReading(length + 0.1, force + 1));
        return readings;
    }

    private static double simpson(ElasticLaw law, double from, double to, int steps) {
        double step = (to - from) / steps;
        double sum = law.tension(from) + law.tension(to);
        for (int i = 1; i < steps; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * law.tension(from + i * step);
        }
        return sum * step / 3;
    }
}
