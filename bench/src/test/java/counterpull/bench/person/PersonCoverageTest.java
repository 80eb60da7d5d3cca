package counterpull.bench.person;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Estimate;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Simulated visits whose truth is known: 95 % intervals must hold it in 93 to 97 % of 2,000, at three noise levels, from three readings up.
 * Efforts scatter by a factor; each visit has its own day, pad and limb-weight error, all with the stated standard deviations. Seeds fixed
 * beforehand.
 */
class PersonCoverageTest {
    private static final int TRIALS = 2000;
    private static final double TRUE_TORQUE = 140;
    private static final double ARM = 0.34;

    private final Random random = new Random(20_261_125);

    private double share(BiFunction<Double, Integer, Boolean> trial, double noise, int readings) {
        int held = 0;
        for (int i = 0; i < TRIALS; i++) {
            held += trial.apply(noise, readings) ? 1 : 0;
        }
        return held / (double) TRIALS;
    }

    private StrengthResult visit(double truth, double noise, int readings, double believedDay) {
        return visit(truth, noise, readings, believedDay, 0.08);
    }

    private StrengthResult visit(double truth, double noise, int readings, double believedDay, double day) {
        LimbWeight weight = Birds.sitting();
        double weightSd = weight.sd(Action.KNEE_EXTENSION, Birds.BODY, Pad.at(ARM));
        double assumed = weight.torque(Action.KNEE_EXTENSION, Birds.BODY, Pad.at(ARM));
        double trueWeight = assumed + weightSd * random.nextGaussian();
        double trueArm = ARM + Pad.USUAL_SD * random.nextGaussian();
        double today = truth * Math.exp(day * random.nextGaussian());
        List<Effort> efforts = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            double torque = today * Math.exp(noise * random.nextGaussian());
            efforts.add(Effort.reached((torque - trueWeight) / trueArm));
        }
        StrengthBench bench = new StrengthBench(
                Birds.knee(Side.LEFT),
                efforts,
                new StrengthBench.Setting(Pad.at(ARM), weight),
                new Way(Tester.BELT_FIXED, OptionalDouble.of(believedDay), Way.Same.TESTER));
        return bench.answer(Birds.BODY, Optional.empty()).result().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"0.02, 3", "0.06, 3", "0.12, 3", "0.02, 4", "0.06, 4", "0.12, 4", "0.02, 6", "0.06, 6", "0.12, 6"})
    void torque(double noise, int readings) {
        double share = share((sd, n) -> visit(TRUE_TORQUE, sd, n, 0.08).torque().holds(TRUE_TORQUE), noise, readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    @ParameterizedTest
    @CsvSource({"0.02, 3", "0.06, 3", "0.12, 3", "0.06, 5", "0.12, 8"})
    void change(double noise, int readings) {
        double share = share(
                (sd, n) -> {
                    StrengthResult before = visit(TRUE_TORQUE, sd, n, 0.08);
                    StrengthResult now = visit(1.15 * TRUE_TORQUE, sd, n, 0.08);
                    Comparison found = new Comparing(Optional.empty())
                            .visits(before, now)
                            .result()
                            .orElseThrow();
                    return found.percent().holds(0.15);
                },
                noise,
                readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    @ParameterizedTest
    @CsvSource({"0.02, 3", "0.06, 3", "0.12, 3", "0.06, 5", "0.12, 8"})
    void difference(double noise, int readings) {
        double share = share(
                (sd, n) -> {
                    StrengthResult left = visit(0.9 * TRUE_TORQUE, sd, n, 0.08);
                    StrengthResult right = visit(TRUE_TORQUE, sd, n, 0.08);
                    return new Comparing(Optional.empty())
                            .sides(left, right)
                            .result()
                            .orElseThrow()
                            .percent()
                            .holds(-0.1);
                },
                noise,
                readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    /** Nothing has changed: a change is claimed in about 5 of 100. */
    @ParameterizedTest
    @CsvSource({"0.02, 3", "0.06, 3", "0.12, 3"})
    void noChangeIsSeldomCalledOne(double noise, int readings) {
        double share = share(
                (sd, n) -> !new Comparing(Optional.empty())
                        .visits(visit(TRUE_TORQUE, sd, n, 0.08), visit(TRUE_TORQUE, sd, n, 0.08))
                        .result()
                        .orElseThrow()
                        .beyond(),
                noise,
                readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "3, 3", "6, 3", "1, 5", "3, 5", "6, 8"})
    void range(double noise, int readings) {
        double truth = Math.toRadians(118);
        RangeBench.Which which =
                new RangeBench.Which(Joint.KNEE, Side.LEFT, RangeBench.End.MOST, RangeBench.How.PAIN_FREE);
        double day = AngleGauge.GONIOMETER.sd(Joint.KNEE, RangeBench.End.MOST);
        double share = share(
                (sd, n) -> {
                    double today = truth + day * random.nextGaussian();
                    List<Double> angles = new ArrayList<>();
                    for (int i = 0; i < n; i++) {
                        angles.add(today + Math.toRadians(sd) * random.nextGaussian());
                    }
                    return new RangeBench(which, AngleGauge.GONIOMETER, angles)
                            .answer()
                            .result()
                            .map(result -> result.angle().holds(truth))
                            .orElse(true);
                },
                noise,
                readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    @ParameterizedTest
    @CsvSource({"0.002, 3", "0.005, 3", "0.010, 3", "0.005, 6"})
    void length(double noise, int readings) {
        double truth = 0.42;
        double share = share(
                (sd, n) -> {
                    double felt = truth * (1 + 0.01 * random.nextGaussian());
                    List<Double> lengths = new ArrayList<>();
                    for (int i = 0; i < n; i++) {
                        lengths.add(felt + sd * random.nextGaussian());
                    }
                    Estimate found = new LengthBench("thigh left", lengths, OptionalDouble.empty())
                            .answer()
                            .result()
                            .orElseThrow();
                    return found.holds(truth);
                },
                noise,
                readings);
        assertThat(share).isBetween(0.93, 0.97);
    }

    /** The control: believing that days do not differ, most intervals miss. */
    @Test
    void leavingOutTheDayIsFound() {
        double share =
                share((sd, n) -> visit(TRUE_TORQUE, sd, n, 0.001).torque().holds(TRUE_TORQUE), 0.02, 3);
        assertThat(share).isLessThan(0.85);
    }
}
