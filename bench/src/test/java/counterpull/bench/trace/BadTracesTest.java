package counterpull.bench.trace;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Traces that are wrong or doubtful: what is said names the sample or the time, the value and the limit. */
class BadTracesTest {
    private static final Trace GOOD = Traces.noisy(Traces.even(Traces.trapezoid(), 6, 1000), 1.5, 0.5, new Random(11));

    private static String said(Trace trace, String code) {
        List<Remark> remarks = TraceBench.of(trace).remarks();
        return remarks.stream()
                .filter(remark -> remark.code().equals(code))
                .map(Remark::inSi)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not among "
                        + remarks.stream().map(Remark::code).toList()));
    }

    private static String refused(Trace trace, String code) {
        assertThat(TraceBench.of(trace).result()).isEmpty();
        return said(trace, code);
    }

    private static Trace changed(Trace trace, int sample, double time, double force) {
        double[] times = new double[trace.size()];
        double[] forces = new double[trace.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = i == sample ? time : trace.time(i);
            forces[i] = i == sample ? force : trace.force(i);
        }
        return Trace.of(times, forces);
    }

    private static Trace times(double factor, double perSecond) {
        DoubleUnaryOperator force = Traces.trapezoid();
        return Traces.even(t -> factor * force.applyAsDouble(t), 6, perSecond);
    }

    /** The control: a good trace has nothing said against it. */
    @Test
    void aGoodTraceIsTakenWithoutAWord() {
        Answer<TraceFindings> answer = TraceBench.of(GOOD);
        assertThat(answer.result()).isPresent();
        assertThat(answer.remarks()).isEmpty();
    }

    @Test
    void tooFewSamples() {
        assertThat(refused(Traces.even(t -> 100 * t, 1, 4), "too-few-samples"))
                .isEqualTo("the trace has 5 samples; at least 10 are needed");
    }

    @Test
    void tooShort() {
        assertThat(refused(Traces.even(t -> 500 * t, 0.8, 100), "too-short"))
                .startsWith("the trace lasts 0.8 s; a mean over a second needs 1 s");
    }

    @Test
    void timeThatFallsOrStands() {
        assertThat(refused(changed(GOOD, 40, 0.01, 20), "time-not-rising"))
                .isEqualTo("time does not rise: sample 41 is at 0.01 s, the one before it at 0.039 s");
        assertThat(refused(changed(GOOD, 40, 0.039, 20), "time-not-rising")).contains("sample 41 is at 0.039 s");
    }

    @Test
    void manyTimesThatFallAreCounted() {
        Trace backward = Traces.even(t -> 0, 0.02, 1000);
        double[] times = new double[backward.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = -i;
        }
        List<Remark> remarks =
                TraceBench.of(Trace.of(times, new double[times.length])).remarks();
        assertThat(remarks).extracting(Remark::inSi).contains("and at 17 more samples time does not rise");
    }

    @Test
    void notANumber() {
        assertThat(refused(changed(GOOD, 6, 0.006, Double.NaN), "not-a-number")).isEqualTo("sample 7 is not a number");
    }

    @Test
    void flat() {
        assertThat(refused(Traces.even(t -> 21 + Math.sin(t), 5, 100), "flat-trace"))
                .startsWith("the force stays between 20 N and 22 N")
                .endsWith("an effort changes it by at least 5 N");
    }

    @Test
    void negative() {
        assertThat(refused(times(-1, 100), "negative-force"))
                .startsWith("the force goes below zero, to -400 N at sample 151")
                .contains("turn the sign around");
    }

    @Test
    void tenTimesAndMore() {
        assertThat(refused(times(100, 100), "force-too-large"))
                .isEqualTo("sample 151 shows 40000 N, more than 10000 N: a slip of the decimal sign or of the unit");
    }

    @Test
    void kilogramsForNewtons() {
        assertThat(said(times(1 / 9.80665, 1000), "kilograms"))
                .startsWith("the highest force is 40.789 N, less than 60 N")
                .endsWith("this would be 400 N");
    }

    @Test
    void milliseconds() {
        DoubleUnaryOperator force = Traces.trapezoid();
        assertThat(said(Traces.even(t -> force.applyAsDouble(t / 1000), 6000, 0.5), "long-trace"))
                .isEqualTo("the trace lasts 6000 s, more than 600 s: are its times milliseconds?");
    }

    @Test
    void clipped() {
        double[] times = new double[GOOD.size()];
        double[] forces = new double[GOOD.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = GOOD.time(i);
            forces[i] = Math.min(395, GOOD.force(i));
        }
        assertThat(said(Trace.of(times, forces), "clipped")).contains("samples show 395 N to the last digit");
    }

    @Test
    void gap() {
        double[] times = new double[600];
        double[] forces = new double[600];
        for (int i = 0; i < 600; i++) {
            times[i] = i < 300 ? i * 0.01 : i * 0.01 + 0.4;
            forces[i] = Traces.trapezoid().applyAsDouble(times[i]) + (i % 2);
        }
        Trace trace = Trace.of(times, forces);
        assertThat(said(trace, "gap"))
                .isEqualTo(
                        "nothing was recorded for 0.41 s before sample 301, where samples usually follow each other in 0.01"
                                + " s");
    }

    @Test
    void aGapInsideTheBestSecond() {
        Trace sparse = Traces.even(Traces.corners(0, 0, 1, 0, 1.5, 300, 4, 310, 6, 0, 8, 0), 8, 2);
        assertThat(said(sparse, "thin-plateau"))
                .contains("nothing was recorded for 0.5 s")
                .contains("0.25 s");
    }

    @Test
    void belowZero() {
        assertThat(said(changed(GOOD, 100, 0.1, -60), "below-zero"))
                .isEqualTo("the force goes below zero, to -60 N at sample 101: was the device set to zero?");
    }

    @Test
    void aSpike() {
        assertThat(said(changed(GOOD, 3000, 3.0, 900), "spike"))
                .startsWith("sample 3001 stands alone: it shows 900 N and its neighbours no more than ");
    }

    @Test
    void somebodyPushesAlready() {
        Trace trace = Traces.even(Traces.corners(0, 150, 2, 150, 2.3, 400, 5, 400, 5.3, 150, 7, 150), 7, 200);
        assertThat(said(trace, "heavy-rest")).contains("the device shows 150 N").contains("(400 N)");
    }

    @Test
    void restThatMoves() {
        Trace trace = Traces.even(
                Traces.corners(0, 0, 1, 0, 1.1, 40, 1.12, 0, 1.3, 25, 1.31, 5, 1.4, 300, 4, 300, 4.2, 0, 6, 0), 6, 500);
        assertThat(said(trace, "rest-moves")).startsWith("just before effort 1 the device shows ");
    }

    @Test
    void unsteadyAndTooShortEfforts() {
        DoubleUnaryOperator saw = t -> t < 1 || t > 5 ? 0 : 250 + 80 * Math.sin(20 * t);
        assertThat(said(Traces.even(saw, 6, 500), "unsteady"))
                .contains("effort 1")
                .endsWith("below 0.05 it counts as held");
        Trace jab = Traces.even(Traces.corners(0, 0, 1, 0, 1.2, 300, 1.7, 300, 1.9, 0, 4, 0), 4, 500);
        assertThat(said(jab, "effort-too-short")).startsWith("effort 1 lasted 0.8 s; a mean over a second needs 1 s");
    }

    @Test
    void everythingIsSaidAtOnce() {
        Trace trace = changed(changed(times(-1, 100), 40, 0.1, 0), 41, 0.05, 0);
        assertThat(TraceBench.of(trace).remarks())
                .extracting(Remark::code)
                .containsExactly("time-not-rising", "time-not-rising", "negative-force");
    }
}
