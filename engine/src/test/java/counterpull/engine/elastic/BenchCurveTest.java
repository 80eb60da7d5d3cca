package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BenchCurveTest {
    @Test
    void goesThroughItsReadings() {
        for (BenchReading reading : Rubbers.loading()) {
            assertThat(Rubbers.BENCH.tension(reading.length() / 0.60)).isCloseTo(reading.force(), within(1e-12));
        }
        assertThat(Rubbers.BENCH.tension(2.51)).as("past the last reading").isNaN();
        assertThat(Rubbers.BENCH.energy(2.51)).isNaN();
        assertThat(Rubbers.BENCH.slope(2.51)).isNaN();
    }

    @Test
    void theNaturalLengthMayBeGivenAsAReading() {
        List<BenchReading> more = new ArrayList<>(Rubbers.loading());
        more.add(0, new BenchReading(0.60, 0));
        BenchCurve curve = new BenchCurve(0.60, more);
        for (double stretch = 1; stretch < 2.5; stretch += 0.07) {
            assertThat(curve.tension(stretch)).isEqualTo(Rubbers.BENCH.tension(stretch));
        }
    }

    @Test
    void readingsOnAStraightLineGiveTheLinearLaw() {
        BenchCurve curve = new BenchCurve(
                0.60, List.of(new BenchReading(0.7, 15), new BenchReading(0.8, 30), new BenchReading(1.2, 90)));
        for (double stretch = 1; stretch < 2; stretch += 0.05) {
            assertThat(curve.tension(stretch)).isCloseTo(Rubbers.LINEAR.tension(stretch), within(1e-12));
            assertThat(curve.energy(stretch)).isCloseTo(Rubbers.LINEAR.energy(stretch), within(1e-12));
        }
    }

    /** A fixed rule of 20,000 trapezoids errs by less than 1e-7 here; the cubics' own integral has no such step. */
    @Test
    void energyIsTheAreaUnderTheCurve() {
        int steps = 20_000;
        double step = 1.5 / steps;
        double area = 0;
        for (int i = 0; i < steps; i++) {
            area += step * (Rubbers.BENCH.tension(1 + i * step) + Rubbers.BENCH.tension(1 + (i + 1) * step)) / 2;
        }
        assertThat(Rubbers.BENCH.energy(2.5)).isCloseTo(area, within(1e-6));
    }

    @Test
    void aFlatPieceStaysFlatAndASteepOneDoesNotOvershoot() {
        BenchCurve curve = new BenchCurve(
                1,
                List.of(
                        new BenchReading(1.1, 10),
                        new BenchReading(1.2, 10),
                        new BenchReading(1.21, 40),
                        new BenchReading(2, 41)));
        assertThat(curve.tension(1.13)).isCloseTo(10, within(1e-12));
        assertThat(curve.slope(1.13)).isCloseTo(0, within(1e-9));
        for (double stretch = 1; stretch <= 2; stretch += 0.0005) {
            assertThat(curve.slope(stretch)).as("slope at %s", stretch).isGreaterThanOrEqualTo(-1e-9);
            assertThat(curve.tension(stretch)).isBetween(0.0, 41 + 1e-9);
        }
    }

    @Test
    void equalReadingsMakeEqualCurves() {
        assertThat(new BenchCurve(0.60, Rubbers.loading()))
                .isEqualTo(Rubbers.BENCH)
                .hasSameHashCodeAs(Rubbers.BENCH);
        assertThat(new BenchCurve(0.61, Rubbers.loading())).isNotEqualTo(Rubbers.BENCH);
    }

    @Test
    void anUnloadingCurveLosesAndClosesAtTheTestedMaximum() {
        Strand strand = Rubbers.of(Rubbers.BENCH, new UnloadingCurve(0.60, Rubbers.unloading()))
                .single();
        assertThat(strand.unloadingForce(0.85)).isCloseTo(17.4, within(1e-12));
        assertThat(strand.unloadingForce(strand.maxLength())).isCloseTo(46.0, within(1e-9));
        for (double length = 0.6; length <= 1.5; length += 0.001) {
            assertThat(strand.unloadingForce(length)).isLessThanOrEqualTo(strand.force(length) + 1e-9);
            assertThat(strand.energyReturned(length)).isLessThanOrEqualTo(strand.energy(length) + 1e-9);
        }
        assertThat(strand.energyReturned(1.5)).isLessThan(0.97 * strand.energy(1.5));
    }

    @Test
    void energyReturnedIsTheAreaUnderTheUnloadingCurve() {
        Strand strand = Rubbers.of(Rubbers.BENCH, new UnloadingCurve(0.60, Rubbers.unloading()))
                .single();
        // Central differences with a step of 1e-5 m; the unloading force is smooth away from its readings.
        for (double length = 0.603; length < 1.49; length += 0.0117) {
            double slope = (strand.energyReturned(length + 1e-5) - strand.energyReturned(length - 1e-5)) / 2e-5;
            assertThat(slope).isCloseTo(strand.unloadingForce(length), within(1e-5));
        }
    }

    @Test
    void anUnloadingReadingAboveLoadingIsNamed() {
        List<BenchReading> readings = new ArrayList<>(Rubbers.unloading());
        readings.set(2, new BenchReading(1.00, 26.5));
        Refusal refusal = catchThrowableOfType(
                Refusal.class, () -> Rubbers.of(Rubbers.BENCH, new UnloadingCurve(0.60, readings)));
        assertThat(refusal.quantity()).isEqualTo("unloading reading 3");
        assertThat(refusal.value()).isCloseTo(26.5, within(1e-12));
        assertThat(refusal.limit()).isCloseTo(26.0, within(1e-12));
    }

    @Test
    void anUnloadingCurveThatBulgesAboveLoadingBetweenReadingsIsRefused() {
        UnloadingCurve sparse = new UnloadingCurve(0.60, List.of(new BenchReading(1.50, 46.0)));
        LinearLaw steepLate = new LinearLaw(30);
        BenchCurve late = new BenchCurve(0.60, List.of(new BenchReading(1.2, 5), new BenchReading(1.50, 46.0)));
        assertThat(catchThrowableOfType(Refusal.class, () -> Rubbers.of(late, sparse))
                        .quantity())
                .isEqualTo("the unloading curve");
        assertThat(catchThrowableOfType(Refusal.class, () -> Rubbers.of(steepLate, sparse))
                        .quantity())
                .isEqualTo("unloading reading 1");
    }

    @Test
    void aReadingAtTheTestedMaximumStaysAsMeasured() {
        List<BenchReading> readings = new ArrayList<>(Rubbers.unloading());
        readings.add(new BenchReading(1.50, 45.0));
        Strand strand =
                Rubbers.of(Rubbers.BENCH, new UnloadingCurve(0.60, readings)).single();
        assertThat(strand.unloadingForce(1.50)).isCloseTo(45.0, within(1e-12));
    }
}
