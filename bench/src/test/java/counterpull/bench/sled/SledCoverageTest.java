package counterpull.bench.sled;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Coverage;
import counterpull.bench.Estimate;
import counterpull.bench.Way;
import org.junit.jupiter.api.Test;

/** Made-up sleds, read with noise: the intervals hold the truth as often as they say. */
class SledCoverageTest {
    private static final double[] NOISES = {1, 4, 10};

    private static SledFound found(SimulatedSled.Reading how, int trial) {
        Answer<SledFound> answer = SimulatedSled.USUAL
                .read(how, Coverage.random(how.toString().replaceAll("@\\w+", ""), trial))
                .answer();
        return answer.result().orElse(null);
    }

    private static void run(SimulatedSled.Reading how, Coverage coverage) {
        SimulatedSled truth = SimulatedSled.USUAL;
        for (int trial = 0; trial < Coverage.trials(); trial++) {
            SledFound found = found(how, trial);
            if (found == null) {
                continue;
            }
            String name = how.loads().length + " loads x " + how.times() + " noise " + how.noise()
                    + (how.stated() ? " stated " : " ");
            coverage.count(name + "angle", found.angle(), truth.angle());
            coverage.count(name + "mass", found.mass(), truth.mass());
            coverage.count(name + "breakaway", found.breakaway().orElseThrow(), truth.breakaway());
            coverage.count(name + "empty pull up", found.lines().pull(Way.UP, 0), truth.pull(Way.UP, 0));
            if (found.friction() instanceof SledFriction.Apart apart) {
                coverage.count(name + "constant", apart.constant(), truth.constant());
                coverage.count(name + "coefficient", apart.coefficient(), truth.coefficient());
            } else if (found.friction() instanceof SledFriction.Together together) {
                double load = together.plates();
                coverage.count(name + "friction", together.force(), truth.pull(Way.UP, load) - truth.weight(load));
            }
        }
    }

    @Test
    void threePullsEachWayAtTwoLoads() {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            run(new SimulatedSled.Reading(new double[] {0, 100}, 3, 3, true, noise, false), coverage);
        }
        coverage.holds();
    }

    @Test
    void onePullEachWayWithAScaleThatIsKnown() {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            run(new SimulatedSled.Reading(new double[] {0, 100}, 1, 3, true, noise, true), coverage);
        }
        coverage.holds();
    }

    @Test
    void threeLoads() {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            run(new SimulatedSled.Reading(new double[] {0, 60, 120}, 2, 4, false, noise, false), coverage);
        }
        coverage.holds();
    }

    @Test
    void oneLoadWithThreePullsEachWay() {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            run(new SimulatedSled.Reading(new double[] {0}, 3, 1, true, noise, false), coverage);
        }
        coverage.holds();
    }

    /** The control: intervals six tenths as wide do not hold what they promise. */
    @Test
    void narrowIntervalsAreFoundOut() {
        SimulatedSled.Reading how = new SimulatedSled.Reading(new double[] {0, 100}, 3, 3, true, 4, false);
        Coverage coverage = new Coverage();
        for (int trial = 0; trial < Coverage.trials(); trial++) {
            Estimate mass = found(how, trial).mass();
            double off = Math.abs(SimulatedSled.USUAL.mass() - mass.value());
            coverage.count("mass", off < 0.6 * mass.halfWidth());
        }
        assertThat(coverage.share("mass")).isLessThan(0.87);
    }
}
