package counterpull.bench.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class TraceBenchTest {
    /** Sums of a few thousand products of doubles. */
    private static final Offset<Double> ROUNDING = within(1e-6);

    private static TraceFindings found(Trace trace) {
        Answer<TraceFindings> answer = TraceBench.of(trace);
        return answer.result()
                .orElseThrow(() -> new AssertionError(
                        answer.remarks().stream().map(Remark::inSi).toList()));
    }

    private static List<String> codes(Trace trace) {
        return TraceBench.of(trace).remarks().stream().map(Remark::code).toList();
    }

    /** Worked by hand: threshold 20 + 2 % of 380 = 27.6 N, passed a fiftieth of the way up the half-second ramp of 760 N/s. */
    @Test
    void aTrapezoidIsReadExactly() {
        TraceFindings findings = found(Traces.even(Traces.trapezoid(), 6, 1000));
        assertThat(findings.efforts()).hasSize(1);
        assertThat(findings.rest().orElseThrow().mean()).isCloseTo(20, ROUNDING);
        Effort effort = findings.best();
        assertThat(effort.peak().force()).isCloseTo(400, ROUNDING);
        assertThat(effort.plateau().orElseThrow().mean()).isCloseTo(400, ROUNDING);
        assertThat(effort.plateau().orElseThrow().steadiness()).isCloseTo(0, ROUNDING);
        assertThat(effort.onset().orElseThrow().threshold()).isCloseTo(27.6, ROUNDING);
        assertThat(effort.onset().orElseThrow().time()).isCloseTo(1.01, ROUNDING);
        assertThat(effort.rises())
                .hasSize(4)
                .allSatisfy(rise -> assertThat(rise.rate()).isCloseTo(760, ROUNDING));
        assertThat(effort.steepest().rate()).isCloseTo(760, ROUNDING);
    }

    /**
     * Force 500 (1 − e^(−t/0.08)) N: means of its slope over 50, 100, 150 and 200 ms from t = 0, computed from the formula: 4647.386, 3567.476,
     * 2822.150, 2294.788 N/s. From the onset at 2 % of the rise on, what is left to rise is 98 % of it everywhere.
     */
    @Test
    void anExponentialRiseHasItsClosedFormRates() {
        double[] expected = {4647.386, 3567.476, 2822.150, 2294.788};
        DoubleUnaryOperator rise = t -> t < 1 ? 0 : 500 * (1 - Math.exp(-(t - 1) / 0.08));
        Trace trace = Traces.even(rise, 4, 10_000);
        Effort effort = found(trace).best();
        for (int i = 0; i < expected.length; i++) {
            double window = 0.05 * (i + 1);
            assertThat(Rise.over(trace, 1, window).rate())
                    .as("from its first moment, over %s s; to the printed digits", window)
                    .isCloseTo(expected[i], within(6e-4));
            assertThat(effort.rises().get(i).rate())
                    .as("from 2 %% on, over %s s; straight pieces of 0.1 ms are off by 1e-6 of it", window)
                    .isCloseTo(0.98 * expected[i], within(0.02));
        }
    }

    /** Steepest 20 ms of the same curve begin where it begins: 500 (1 − e^(−0.25)) / 0.02. */
    @Test
    void theSteepestRiseIsFoundWhereverItIs() {
        DoubleUnaryOperator rise = t -> t < 1 ? 0 : 500 * (1 - Math.exp(-(t - 1) / 0.08));
        Rise steepest = Rise.steepest(Traces.even(rise, 4, 1000), 0.5, 2, 0.02);
        assertThat(steepest.rate()).isCloseTo(500 * (1 - Math.exp(-0.25)) / 0.02, within(1e-6));
        assertThat(steepest.from()).isCloseTo(1, within(1e-9));
    }

    /**
     * Up at a N/s, down at b N/s from a peak P: the best second has equal forces d below the peak at its ends, d/a + d/b = 1, and its mean is
     * P − d/2. Neither end lies on a sample.
     */
    @Test
    void theBestSecondLiesBetweenSamplesWhereItMust() {
        double a = 150;
        double b = 100;
        Trace trace = Trace.of(
                new double[] {0, 0.2, 0.4, 0.6, 0.8, 1, 1.9, 2.1, 3, 4.9, 5.2, 6},
                forces(a, b, 3, new double[] {0, 0.2, 0.4, 0.6, 0.8, 1, 1.9, 2.1, 3, 4.9, 5.2, 6}));
        Plateau plateau = found(trace).best().plateau().orElseThrow();
        double below = a * b / (a + b);
        assertThat(plateau.mean()).isCloseTo(300 - below / 2, ROUNDING);
        assertThat(plateau.from()).isCloseTo(3 - below / a, ROUNDING);
        assertThat(plateau.steadiness())
                .as("a straight line from 0 to d has standard deviation d/√12")
                .isCloseTo(below / Math.sqrt(12) / plateau.mean(), ROUNDING);
    }

    private static double[] forces(double up, double down, double top, double[] times) {
        double[] forces = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            forces[i] =
                    times[i] < 1 ? 0 : times[i] <= top ? up * (times[i] - 1) : up * (top - 1) - down * (times[i] - top);
        }
        return forces;
    }

    /** Half a sine of T seconds: the best second is its middle, with mean (2 A T/π) sin(π/(2 T)). */
    @Test
    void theBestSecondOfASineIsItsMiddle() {
        double length = 4;
        DoubleUnaryOperator sine = t -> t < 1 || t > 1 + length ? 0 : 300 * Math.sin(Math.PI * (t - 1) / length);
        Plateau plateau = found(Traces.even(sine, 6, 1000)).best().plateau().orElseThrow();
        double expected = 2 * 300 * length / Math.PI * Math.sin(Math.PI / (2 * length));
        assertThat(plateau.mean())
                .as("straight pieces of 1 ms lie below the arc by less than A (π/T)² h²/8 = 2.3e-5 N")
                .isCloseTo(expected, within(3e-5));
        assertThat(plateau.from()).isCloseTo(2.5, within(1e-3));
    }

    /** A control: with samples crowded where the force is low, the mean of the samples is another number than the mean over time. */
    @Test
    void meansAreOverTimeAndNotOverSamples() {
        double[] times = {0, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 2};
        double[] forces = {0, 0, 0, 0, 0, 0, 0, 0, 0, 80};
        Trace trace = Trace.of(times, forces);
        assertThat(trace.mean(1, 2)).isCloseTo(32, ROUNDING);
        assertThat((0 + 0 + 0 + 80) / 4.0)
                .as("mean of the four samples in that second")
                .isNotCloseTo(32, within(5.0));
    }

    @Test
    void severalEffortsAreToldApart() {
        DoubleUnaryOperator three = Traces.corners(
                0, 0, 1, 0, 1.3, 300, 4, 300, 4.3, 0, 6, 0, 6.3, 320, 9, 320, 9.3, 0, 11, 0, 11.3, 310, 14, 310, 14.3,
                0, 15, 0);
        TraceFindings findings = found(Traces.even(three, 15, 200));
        assertThat(findings.efforts())
                .extracting(effort -> Math.round(effort.peak().force()))
                .containsExactly(300L, 320L, 310L);
        assertThat(findings.best().number()).isEqualTo(2);
        assertThat(findings.efforts().get(2).onset().orElseThrow().time()).isCloseTo(11 + 0.3 * 0.02, within(1e-6));
        assertThat(findings.scatter().orElseThrow())
                .as("300, 320, 310: standard deviation 10 about 310")
                .isCloseTo(10.0 / 310, ROUNDING);
    }

    /** A short dip is inside one effort; a pause of half a second parts two. */
    @Test
    void aDipIsNoPause() {
        DoubleUnaryOperator dip =
                Traces.corners(0, 0, 1, 0, 1.3, 300, 3, 300, 3.1, 20, 3.4, 20, 3.5, 300, 5, 300, 5.3, 0, 6, 0);
        assertThat(found(Traces.even(dip, 6, 200)).efforts()).hasSize(1);
        DoubleUnaryOperator pause =
                Traces.corners(0, 0, 1, 0, 1.3, 300, 3, 300, 3.1, 20, 3.7, 20, 3.8, 300, 5, 300, 5.3, 0, 6, 0);
        assertThat(found(Traces.even(pause, 6, 200)).efforts()).hasSize(2);
    }

    @Test
    void aWeakBumpIsSaidAndNotCounted() {
        DoubleUnaryOperator bump =
                Traces.corners(0, 0, 1, 0, 1.3, 300, 4, 300, 4.3, 0, 6, 0, 6.2, 120, 7, 120, 7.2, 0, 9, 0);
        Trace trace = Traces.even(bump, 9, 200);
        assertThat(found(trace).efforts()).hasSize(1);
        assertThat(codes(trace)).contains("weak-bump");
    }

    /** Windows of 50 ms need samples every 10 ms, the steepest 20 ms every 4 ms; slower ones leave them unknown and keep the rest. */
    @Test
    void whatTheSamplesCannotTellIsNotKnown() {
        Effort slow = found(Traces.even(Traces.trapezoid(), 6, 60)).best();
        assertThat(slow.rises()).extracting(Rise::known).containsExactly(false, true, true, true);
        assertThat(slow.steepest().known()).isFalse();
        Effort hundred = found(Traces.even(Traces.trapezoid(), 6, 100)).best();
        assertThat(hundred.rises()).extracting(Rise::known).containsExactly(true, true, true, true);
        assertThat(hundred.steepest().known()).isFalse();
        Effort ten = found(Traces.even(Traces.trapezoid(), 6, 10)).best();
        assertThat(ten.rises()).extracting(Rise::known).containsOnly(false);
        assertThat(ten.plateau().orElseThrow().mean()).isCloseTo(400, ROUNDING);
        assertThat(codes(Traces.even(Traces.trapezoid(), 6, 10))).contains("too-slow-for-rise");
    }

    @Test
    void aTraceThatBeginsInAnEffortHasNoOnset() {
        Trace trace = Traces.even(Traces.corners(0, 300, 3, 300, 3.5, 0, 5, 0), 5, 200);
        assertThat(found(trace).rest()).isEmpty();
        assertThat(found(trace).best().onset()).isEmpty();
        assertThat(found(trace).best().plateau().orElseThrow().mean()).isCloseTo(300, ROUNDING);
        assertThat(codes(trace)).contains("no-rest", "plateau-at-edge");
    }
}
