package counterpull.bench.sled;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Coverage;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Good readings at the edge of what a sled can be: they get an answer, or a reason that helps. */
class SledEdgesTest {
    private static final RailGauge UPRIGHT =
            new RailGauge(List.of(Inclination.once(Math.toRadians(90))), Math.toRadians(0.6), Math.toRadians(0.3));

    private static List<Pull> pulls(SimulatedSled sled, double[] loads, int times, DoubleUnaryOperator read) {
        List<Pull> pulls = new ArrayList<>();
        for (double load : loads) {
            for (Way way : Way.values()) {
                for (int i = 0; i < times; i++) {
                    pulls.add(new Pull(way, load, read.applyAsDouble(sled.pull(way, load))));
                }
            }
        }
        return pulls;
    }

    private static Answer<SledFound> answer(RailGauge gauge, List<Pull> pulls, List<Breakaway> breakaways) {
        return new SledBench("sled", gauge, Riding.plain(), pulls, breakaways, new Noise.FromScatter()).answer();
    }

    private static RailGauge gauge(SimulatedSled sled) {
        return new RailGauge(List.of(Inclination.once(sled.angle())), Math.toRadians(0.6), Math.toRadians(0.3));
    }

    @Test
    void anUprightRailHasFrictionThatNoPlateMakesLarger() {
        SimulatedSled sled = new SimulatedSled(Math.PI / 2, 40, 15, 0.02, 40);
        Random random = new Random(3);
        Answer<SledFound> answer = answer(
                UPRIGHT,
                pulls(sled, new double[] {0, 50, 100}, 3, force -> force + 3 * random.nextGaussian()),
                List.of());
        assertThat(answer.remarks()).extracting(Remark::code).containsExactly("rail-upright");
        SledFriction.Apart friction =
                (SledFriction.Apart) answer.result().orElseThrow().friction();
        assertThat(friction.constant().holds(15)).as("%s", friction.constant()).isTrue();
        assertThat(friction.coefficient().value()).isZero();
    }

    /** The only reading of a breakaway is as unsure as the pulls' own scatter makes one, and that was judged from few. */
    @Test
    void oneBreakawayBesideFourPulls() {
        SimulatedSled sled = SimulatedSled.USUAL;
        Coverage coverage = new Coverage();
        for (int trial = 0; trial < 2 * Coverage.trials(); trial++) {
            Random random = Coverage.random("one breakaway", trial);
            List<Pull> pulls = pulls(sled, new double[] {0}, 2, force -> force + 3 * random.nextGaussian());
            double first = sled.weight(0) + sled.breakaway() + 3 * random.nextGaussian();
            answer(gauge(sled), pulls, List.of(new Breakaway(0, first)))
                    .result()
                    .ifPresent(found ->
                            coverage.count("one breakaway", found.breakaway().orElseThrow(), sled.breakaway()));
        }
        coverage.holds();
    }

    @Test
    void pullsInStepsOfAKilogramAreNotTakenForSure() {
        Answer<SledFound> answer = answer(
                gauge(SimulatedSled.USUAL),
                pulls(SimulatedSled.USUAL, new double[] {0, 100}, 3, force -> Math.round(force / 9.80665) * 9.80665),
                List.of());
        assertThat(answer.remarks())
                .filteredOn(remark -> remark.code().equals("coarse-steps"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.inSi()).contains("steps of 9.80", "2.8309 N or more"));
    }

    @Test
    void onePullEachWayAtTwoLoadsIsToldHowManyMore() {
        Answer<SledFound> answer = answer(
                gauge(SimulatedSled.USUAL),
                pulls(SimulatedSled.USUAL, new double[] {0, 100}, 1, force -> force + 1),
                List.of());
        assertThat(answer.remarks()).singleElement().satisfies(remark -> {
            assertThat(remark.code()).isEqualTo("too-few-pulls");
            assertThat(remark.inSi()).contains("5 are needed");
        });
    }

    /** No friction at all: down lies above up half of the time, and the odd pair by two of its own standard deviations. */
    @Test
    void aSledThatHardlyRubsIsNotRefused() {
        SimulatedSled smooth = new SimulatedSled(Math.toRadians(45), 40, 0, 0, 40);
        int refused = 0;
        for (int trial = 0; trial < 200; trial++) {
            Random random = Coverage.random("smooth", trial);
            List<Pull> pulls = pulls(smooth, new double[] {0, 100}, 3, force -> force + 3 * random.nextGaussian());
            refused += answer(gauge(smooth), pulls, List.of()).result().isEmpty() ? 1 : 0;
        }
        assertThat(refused).as("of 200; at two standard deviations it was 5").isLessThanOrEqualTo(2);
    }

    /** Two hundred newtons or so whatever is on. */
    @Test
    void platesThatWereNeverOnAreAskedFor() {
        double[] loads = {20, 40, 20, 20, 0, 40, 0, 20, 40, 20};
        double[] forces = {190, 200, 210, 210, 210, 190, 200, 190, 190, 210};
        String ways = "DUDDDUUDDD";
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < loads.length; i++) {
            pulls.add(new Pull(ways.charAt(i) == 'U' ? Way.UP : Way.DOWN, loads[i], forces[i]));
        }
        RailGauge thirty = new RailGauge(List.of(Inclination.once(Math.toRadians(30))), 0.01, 0.01);
        assertThat(answer(thirty, pulls, List.of()).remarks())
                .filteredOn(Remark::refuses)
                .singleElement()
                .satisfies(remark -> {
                    assertThat(remark.code()).isEqualTo("plates-not-felt");
                    assertThat(remark.inSi()).contains("49.033 N", "were the plates on");
                });
    }
}
