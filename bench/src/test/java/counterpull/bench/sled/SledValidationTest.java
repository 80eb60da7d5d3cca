package counterpull.bench.sled;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.load.Counterweight;
import counterpull.engine.validation.Published;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SledValidationTest {
    private static final String CLOSED_FORM =
            "100 kg on rails at 45 deg, g = 9.81, Coulomb friction: (mg sin θ ± μ mg cos θ); computed apart from this code";
    private static final double FORTY_FIVE = Math.PI / 4;

    private static RailGauge gauge(double angle) {
        return new RailGauge(List.of(Inclination.once(angle)), 0, 1e-5);
    }

    private static SledFound found(RailGauge gauge, List<Pull> pulls, double noise) {
        Riding riding = new Riding(1e-4, Counterweight.none(), Riding.PlateEnd.UPPER);
        Answer<SledFound> answer =
                new SledBench("sled", gauge, riding, pulls, List.of(), new Noise.Stated(noise)).answer();
        return answer.result()
                .orElseThrow(() -> new AssertionError(answer.remarks().get(0).inSi()));
    }

    private static List<Pull> pair(double plates, double up, double down) {
        return List.of(new Pull(Way.UP, plates, up), new Pull(Way.DOWN, plates, down));
    }

    private static Published published(String what, String unit) {
        return Published.of(what, unit).section("Sled bench");
    }

    /** The printed pushes are for g = 9.81: forces are scaled to the standard gravity that the bench weighs with. */
    @Test
    void frictionIsRecoveredFromThePrintedPairs() {
        double[][] printed = {{0.02, 707.55, 679.80}, {0.05, 728.36, 658.99}, {0.10, 763.04, 624.30}};
        double gravity = 9.80665 / 9.81;
        for (double[] row : printed) {
            SledFound found = found(gauge(FORTY_FIVE), pair(0, row[1] * gravity, row[2] * gravity), 0.01);
            SledFriction.Together friction = (SledFriction.Together) found.friction();
            published("carriage from the pair of pulls with μ = " + row[0], "kg")
                    .source(CLOSED_FORM)
                    .value(100)
                    .ours(found.mass().value())
                    .within(0.002, "pushes printed to 0.01 N of 694 N");
            published("friction from the pair of pulls with μ = " + row[0], "N")
                    .source(CLOSED_FORM)
                    .value(row[0] * 693.672)
                    .ours(friction.force().value() / gravity)
                    .within(0.011, "two pushes printed to 0.01 N");
        }
    }

    @Test
    void anEmptyCarriageReadByALoadCell() {
        double empty = 49.6 * 9.80665;
        SledFound found = found(gauge(FORTY_FIVE), pair(0, empty, empty), 2);
        published("carriage that reads 49.6 kgf along rails at 45 deg", "kg")
                .source(
                        "load cell in the slide plane of a plate-loaded leg press, empty; looked up, authors not shown; "
                                + "70.1 kg computed from it")
                .value(70.1)
                .ours(found.mass().value())
                .within(0.05, "printed to one decimal");
    }

    /** A sled dragged on the flat: friction against weight is the same law without the rail. */
    @Test
    void constantAndLoadDependentFrictionOfADraggedSled() {
        double[] kilograms = {44.8, 90.0, 136.2};
        double[] coefficient = {0.35, 0.33, 0.31};
        double[] force = new double[3];
        for (int i = 0; i < 3; i++) {
            force[i] = coefficient[i] * kilograms[i] * 9.80665;
        }
        Fit fit = Regression.of(
                        (p, i) -> p[0] + p[1] * kilograms[i] * 9.80665, force, new double[2], new Noise.FromScatter())
                .atLeast(0, 0)
                .atLeast(1, 0)
                .fit();
        String source =
                "Andre, Fry, Bradford & Buhr 2013, J Strength Cond Res 27, sliding friction at three loads; looked up; "
                        + "its straight line computed apart from this code";
        published("constant part of the friction of a dragged sled", "N")
                .source(source)
                .value(29.2)
                .ours(fit.parameters()[0])
                .within(0.05, "printed to one decimal");
        published("coefficient of the friction of a dragged sled", "")
                .source(source)
                .value(0.2903)
                .ours(fit.parameters()[1])
                .within(0.00005, "printed to four decimals");
    }

    /** The page on measuring a sled: 304 and 261 N empty at 45°, 36 N of friction with 100 kg on. */
    @Test
    void thePageOnMeasuringASled() {
        List<Pull> pulls = new ArrayList<>(pair(0, 304, 261));
        double weight = 282.5 + 100 * 9.80665 * Math.sqrt(0.5);
        pulls.addAll(pair(100, weight + 36, weight - 36));
        SledFound found = found(gauge(FORTY_FIVE), pulls, 1);
        SledFriction.Apart friction = (SledFriction.Apart) found.friction();
        assertThat(found.mass().value()).isCloseTo(40.7, org.assertj.core.api.Assertions.within(0.05));
        assertThat(friction.coefficient().value())
                .as("14.5 / 693.4, printed to three decimals")
                .isCloseTo(0.021, org.assertj.core.api.Assertions.within(0.0005));
        assertThat(friction.constant().value())
                .as("15.6 N")
                .isCloseTo(15.6, org.assertj.core.api.Assertions.within(0.05));
        assertThat(found.loads().orElseThrow().disagreement())
                .as("plates and gauge agree")
                .isBetween(-0.2, 0.2);
    }

    @Test
    void aCounterweightIsWeighedAgainst() {
        SimulatedSled sled = SimulatedSled.USUAL;
        double off = 12 * 9.80665;
        List<Pull> pulls = new ArrayList<>();
        for (double load : new double[] {20, 90}) {
            pulls.addAll(pair(load, sled.pull(Way.UP, load) - off, sled.pull(Way.DOWN, load) - off));
        }
        Riding riding = new Riding(1e-4, new Counterweight(12, Counterweight.Run.HANGING), Riding.PlateEnd.LOWER);
        SledFound found = new SledBench("sled", gauge(sled.angle()), riding, pulls, List.of(), new Noise.Stated(1))
                .answer()
                .result()
                .orElseThrow();
        assertThat(found.mass().value()).isCloseTo(sled.mass(), org.assertj.core.api.Assertions.within(1e-4));
        Estimate coefficient = ((SledFriction.Apart) found.friction()).coefficient();
        assertThat(coefficient.value()).isCloseTo(sled.coefficient(), org.assertj.core.api.Assertions.within(1e-6));
        assertThat(found.railAngle()).as("the plate is the lower end").isEqualTo(-sled.angle());
        assertThat(found.carriage().counterweight().mass()).isEqualTo(12);
    }
}
