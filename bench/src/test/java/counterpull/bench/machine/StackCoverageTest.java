package counterpull.bench.machine;

import counterpull.bench.Coverage;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Made-up stacks, read with noise: the intervals of ratio, friction and pins hold the truth as often as they say. */
class StackCoverageTest {
    private static final double RATIO = 2.04;
    private static final double FRICTION = 0.07;
    private static final double[] PRINTED = {20, 40, 60};
    private static final double[] REAL = {22.1, 43.0, 61.2};
    private static final double[] NOISES = {0.5, 2, 5};

    /** How it is read: pins, pulls each way at each, whether accuracies are stated, and whether mass is laid on instead of ways. */
    private record Plan(int pins, int times, double noise, boolean stated, boolean laid, boolean alone) {
        String words() {
            return pins + " pins x " + times + ", noise " + noise + (stated ? " stated" : "") + (laid ? " laid on" : "")
                    + (alone ? " with handle" : "") + ": ";
        }
    }

    private static StackBench read(Plan plan, Random random) {
        List<StackPull> pulls = new ArrayList<>();
        List<Alone> alone = new ArrayList<>();
        double handle = plan.alone ? 40 : 0;
        double real = 20 * (1 + 0.002 * random.nextGaussian());
        for (int i = 0; i < plan.times; i++) {
            for (Way way : Way.values()) {
                if (plan.alone) {
                    alone.add(new Alone(way, handle + way.sense() + plan.noise * random.nextGaussian()));
                }
                for (int pin = 0; pin < plan.pins; pin++) {
                    pulls.add(pull(plan, pin, way, random, 0, handle));
                    if (plan.laid && pin == 0) {
                        pulls.add(pull(plan, pin, way, random, real, handle));
                    }
                }
            }
        }
        List<LineRun> runs = new ArrayList<>();
        double tape = 0.002 * plan.noise;
        for (int i = 0; i < 3 && !plan.laid; i++) {
            double rise = 0.2 + 0.1 * i;
            runs.add(new LineRun(RATIO * rise + tape * random.nextGaussian(), rise + tape * random.nextGaussian()));
        }
        Noise scale = plan.stated ? new Noise.Stated(plan.noise) : new Noise.FromScatter();
        Noise measured = plan.stated ? new Noise.Stated(tape) : new Noise.FromScatter();
        return new StackBench("stack", runs, measured, pulls, alone, List.of(), scale);
    }

    private static StackPull pull(Plan plan, int pin, Way way, Random random, double laid, double handle) {
        double force = (1 + way.sense() * FRICTION) * (REAL[pin] + laid) * 9.80665 / RATIO;
        double alone = plan.alone ? handle + way.sense() : 0;
        return new StackPull(way, PRINTED[pin], laid > 0 ? 20 : 0, force + alone + plan.noise * random.nextGaussian());
    }

    private static void run(int pins, int times, boolean stated, boolean laid, boolean alone) {
        Coverage coverage = new Coverage();
        for (double noise : NOISES) {
            Plan plan = new Plan(pins, times, noise, stated, laid, alone);
            for (int trial = 0; trial < Coverage.trials(); trial++) {
                StackFound found = read(plan, Coverage.random(plan.toString(), trial))
                        .answer()
                        .result()
                        .orElse(null);
                if (found == null) {
                    continue;
                }
                coverage.count(plan.words() + "friction", found.friction(), FRICTION);
                coverage.count(plan.words() + "ratio", found.ratio().orElseThrow(), RATIO);
                for (int pin = 0; pin < pins; pin++) {
                    PinFound one = found.pins().get(pin);
                    coverage.count(plan.words() + "pin " + pin, one.mass().orElseThrow(), REAL[pin]);
                    coverage.count(plan.words() + "felt " + pin, one.felt().orElseThrow(), REAL[pin] / RATIO / RATIO);
                }
            }
        }
        coverage.holds();
    }

    @Test
    void onePinThreeTimes() {
        run(1, 3, false, false, false);
    }

    @Test
    void threePinsThreeTimesWithTheHandleTakenOff() {
        run(3, 3, false, false, true);
    }

    @Test
    void threePinsOnceWithAScaleThatIsKnown() {
        run(3, 1, true, false, false);
    }

    @Test
    void ratioFromMassLaidOn() {
        run(2, 3, false, true, false);
    }
}
