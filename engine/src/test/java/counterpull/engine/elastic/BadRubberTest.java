package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Parameters that no rubber has are refused where they come in. */
class BadRubberTest {
    private static Refusal refusal(ThrowingCallable call) {
        Refusal refusal = catchThrowableOfType(Refusal.class, call);
        assertThat(refusal).as("a refusal").isNotNull();
        return refusal;
    }

    private static Fault fault(ThrowingCallable call) {
        return refusal(call).fault();
    }

    @Test
    void linear() {
        assertThat(fault(() -> new LinearLaw(0))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> LinearLaw.ofStiffness(-1, 1))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> LinearLaw.ofStiffness(-1, -1))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> LinearLaw.ofStiffness(Double.NaN, 1))).isEqualTo(Fault.NOT_FINITE);
    }

    @Test
    void mooneyRivlin() {
        assertThat(fault(() -> new MooneyRivlin(0, 1, 1))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new MooneyRivlin(1e-5, -1, 2))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new MooneyRivlin(1e-5, 2, -1))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new MooneyRivlin(1e-5, 0, 0))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new MooneyRivlin(1e-5, Double.POSITIVE_INFINITY, 0)))
                .isEqualTo(Fault.NOT_FINITE);
    }

    @Test
    void ogden() {
        assertThat(fault(() -> new OgdenTerm(1, -2))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new OgdenTerm(1, 0))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new Ogden(1e-5, List.of()))).isEqualTo(Fault.EMPTY_RANGE);
        assertThat(fault(() -> new Ogden(1e-5, new double[] {1}, new double[] {1, 2})))
                .isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(new OgdenTerm(-1, -2).mu()).as("a negative pair pulls").isEqualTo(-1);
    }

    @Test
    void loss() {
        assertThat(fault(() -> new LossFraction(-0.01))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new LossFraction(1))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new LossFraction(Double.NaN))).isEqualTo(Fault.NOT_FINITE);
    }

    @Test
    void benchReadingsThatFallAreNamed() {
        List<BenchReading> falling =
                List.of(new BenchReading(0.7, 10), new BenchReading(0.8, 15), new BenchReading(0.9, 14.5));
        Refusal refusal = refusal(() -> new BenchCurve(0.6, falling));
        assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(refusal.quantity()).isEqualTo("force in bench reading 3");
        assertThat(refusal.value()).isEqualTo(14.5);
        assertThat(refusal.limit()).isEqualTo(15);
    }

    @Test
    void benchReadingsOutOfOrderAreNamed() {
        List<BenchReading> twice = List.of(new BenchReading(0.7, 10), new BenchReading(0.7, 11));
        assertThat(refusal(() -> new BenchCurve(0.6, twice)).quantity()).isEqualTo("length in bench reading 2");
        List<BenchReading> shortOne = List.of(new BenchReading(0.5, 0), new BenchReading(0.7, 11));
        assertThat(refusal(() -> new BenchCurve(0.6, shortOne)).quantity()).isEqualTo("length in bench reading 1");
        List<BenchReading> pulledAtRest = List.of(new BenchReading(0.6, 1), new BenchReading(0.7, 11));
        assertThat(refusal(() -> new BenchCurve(0.6, pulledAtRest)).quantity()).isEqualTo("length in bench reading 1");
    }

    @Test
    void benchReadingsThatSayNothingAreRefused() {
        assertThat(fault(() -> new BenchCurve(0.6, List.of()))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new BenchCurve(0.6, List.of(new BenchReading(0.7, 0)))))
                .isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new BenchReading(0.7, -1))).isEqualTo(Fault.OUTSIDE_LIMITS);
    }

    @Test
    void pieces() {
        assertThat(fault(() -> piece(" ", 1, 2, 0, 0))).isEqualTo(Fault.EMPTY_RANGE);
        assertThat(fault(() -> piece("A", 0, 2, 0, 0))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> piece("A", 1, 1, 0, 0))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> piece("A", 1, Double.NaN, 0, 0))).isEqualTo(Fault.NOT_FINITE);
        assertThat(fault(() -> piece("A", 1, 2, -0.1, 0))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> piece("A", 1, 2, 0, -0.1))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> piece("A", 1, 2, 0, 1))).isEqualTo(Fault.OUTSIDE_LIMITS);
    }

    private static Rubber piece(String tag, double natural, double tested, double mass, double hardware) {
        return new Rubber(tag, natural, new LinearLaw(100), LossFraction.NONE, tested, mass, hardware);
    }

    @Test
    void aPieceIsNotTestedPastItsBenchCurve() {
        Refusal refusal = refusal(() -> new Rubber("A", 0.6, Rubbers.BENCH, LossFraction.NONE, 1.6, 0, 0));
        assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(refusal.limit()).as("the last reading").isEqualTo(1.5);
    }
}
