package counterpull.bench.machine;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Good readings at the edge of what a machine can be, and readings that say less than they seem to. */
class MachineEdgesTest {
    private static final double G = 9.80665;

    /** A weight on a lever that is lifted to 85°: 9 % of its torque is left there. */
    @Test
    void aTorqueThatFallsToATenthIsNoSlip() {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i <= 5; i++) {
            double angle = Math.toRadians(17 * i);
            for (Way way : Way.values()) {
                readings.add(new Seen(way, angle, 100 * Math.cos(angle) * (1 + 0.08 * way.sense()) + 0.3 * (i % 2)));
            }
        }
        Answer<ProfileFound> answer =
                new ProfileBench("lever", Quantity.TORQUE_BY_ANGLE, readings, new Noise.FromScatter()).answer();
        assertThat(answer.remarks()).extracting(Remark::code).doesNotContain("slip");
        assertThat(answer.result()).isPresent();
    }

    /** Three readings each way at six positions, each the same whole kilogram three times. */
    @Test
    void aProfileInWholeKilogramsIsNotTakenForSure() {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i < 18; i++) {
            for (Way way : Way.values()) {
                double force = 200 + 60 * Math.sin(i % 6 / 2.0) + 15 * way.sense();
                readings.add(new Seen(way, 0.1 * (i % 6), Math.round(force / G) * G));
            }
        }
        Answer<ProfileFound> answer =
                new ProfileBench("machine", Quantity.FORCE_BY_TRAVEL, readings, new Noise.FromScatter()).answer();
        assertThat(answer.remarks())
                .filteredOn(remark -> remark.code().equals("coarse-steps"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.inSi()).contains("steps of 9.80"));
    }

    /** Most positions read one way alone are no scatter, behind which an exchanged pair could hide. */
    @Test
    void anExchangedPairIsSeenAmongPositionsReadOneWay() {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            readings.add(new Seen(Way.UP, 0.1 * i, 220 + 10.3 * i));
        }
        for (int i = 0; i < 3; i++) {
            readings.add(new Seen(Way.DOWN, 0.1 * i, (i == 1 ? 260 : 180) + 10.1 * i));
        }
        Answer<ProfileFound> answer =
                new ProfileBench("machine", Quantity.FORCE_BY_TRAVEL, readings, new Noise.FromScatter()).answer();
        assertThat(answer.remarks())
                .filteredOn(remark -> remark.code().equals("down-above-up"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.inSi()).contains("reading 9"));
    }

    private static List<StackPull> pulls(DoubleUnaryOperator read) {
        List<StackPull> pulls = new ArrayList<>();
        for (double pin : new double[] {20, 40, 60}) {
            for (Way way : Way.values()) {
                for (int i = 0; i < 2; i++) {
                    double force = pin * G / 2 * (1 + 0.06 * way.sense()) + i;
                    pulls.add(new StackPull(way, pin, 0, read.applyAsDouble(force)));
                }
            }
        }
        return pulls;
    }

    private static Answer<StackFound> stack(List<StackPull> pulls) {
        List<LineRun> runs = List.of(new LineRun(1.001, 0.5), new LineRun(0.8, 0.401), new LineRun(1.2, 0.6));
        Noise scatter = new Noise.FromScatter();
        return new StackBench("stack", runs, scatter, pulls, List.of(), List.of(1.2), scatter).answer();
    }

    @Test
    void aPinThatWasPulledOneWayAloneIsNamed() {
        List<StackPull> pulls = pulls(force -> force);
        pulls.add(new StackPull(Way.UP, 80, 0, 80 * G / 2 * 1.06));
        Answer<StackFound> answer = stack(pulls);
        assertThat(answer.result().orElseThrow().pins()).hasSize(3);
        assertThat(answer.remarks())
                .filteredOn(remark -> remark.code().equals("pin-one-way"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.inSi()).contains("pull 13 (up)", "80 kg"));
    }

    /** Nineteen of twenty numbers that lie anywhere alike within 0.05 kg lie within 0.0475 kg. */
    @Test
    void whatWasWeighedInTenthsOfAKilogramIsNoSurerThanThat() {
        double half = stack(pulls(force -> force))
                .result()
                .orElseThrow()
                .moving()
                .orElseThrow()
                .halfWidth();
        assertThat(half).isBetween(0.0475, 0.06);
    }

    /** Both slipped pulls are named, each by its own number, though they read the same. */
    @Test
    void twoSlipsThatReadTheSameAreTwoReadings() {
        List<StackPull> pulls = pulls(force -> force);
        pulls.set(4, new StackPull(Way.UP, 40, 0, 2080));
        pulls.set(5, new StackPull(Way.UP, 40, 0, 2080));
        assertThat(stack(pulls).remarks())
                .filteredOn(remark -> remark.code().equals("slip"))
                .extracting(Remark::inSi)
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("pull 5 (up)"),
                        other -> assertThat(other).startsWith("pull 6 (up)"));
    }
}
