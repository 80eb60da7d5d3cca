package counterpull.bench.repetitions;

import static counterpull.bench.repetitions.ShareOfMaximum.LEG_PRESS;
import static counterpull.bench.repetitions.ShareOfMaximum.ONE_JOINT;
import static counterpull.bench.repetitions.ShareOfMaximum.UPPER_BODY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ShareOfMaximumValidationTest {
    private static Published row(String quantity, String unit) {
        return Published.of(quantity, unit).section("Repetitions to failure and share of the most");
    }

    @Test
    void theChestPressFollowsItsStudysOwnLine() {
        row("chest press, share at five repetitions, of 60 kg", "")
                .source(
                        "Reynolds 2006, J Strength Cond Res 20:584, once = 1.1307 × five + 0.6999 kg; looked up, computed")
                .value(1 / (1.1307 + 0.6999 / 53.0))
                .ours(UPPER_BODY.share(5))
                .within(0.005, "the line and the curve are two fits of the same people");
    }

    @ParameterizedTest
    @CsvSource({"5, 0.050", "10, 0.092", "20, 0.126"})
    void theChestPressSpreadsAsItsStudyErred(int repetitions, double published) {
        row("chest press, spread of the share at " + repetitions + " repetitions", "")
                .source(
                        "Reynolds 2006, errors 2.98, 5.52 and 7.56 kg, the last two computed from R²; of an assumed 60 kg")
                .value(published)
                .ours(UPPER_BODY.spread(repetitions))
                .within(0.004, "ours is one curve through the three");
    }

    @ParameterizedTest
    @CsvSource({"5, 0.909", "10, 0.781", "15, 0.694"})
    void machinesFollowTheMeansOfSix(int repetitions, double published) {
        row("six machines, mean share at " + repetitions + " repetitions", "")
                .source(
                        "Kemmler 2024, Sports 12:233, 40 trained adults of 73 years; coefficients looked up, the values computed")
                .value(published)
                .ours(ONE_JOINT.share(repetitions))
                .within(0.02, "the machines differ by 0.012 to 0.017 among themselves");
    }

    /** Two kinds of study that disagree: ours lies between, and its spread reaches both. */
    @ParameterizedTest
    @CsvSource({"5, 0.8522", "10, 0.7066", "15, 0.5970", "20, 0.5146"})
    void theLegPressReachesBothKindsOfStudy(int repetitions, double byLoad) {
        double byRepetitions = 0.5 + 0.5 * Math.exp(-(repetitions - 1) / 30.0);
        double ours = LEG_PRESS.share(repetitions);
        double factor = Math.exp(1.1 * LEG_PRESS.spread(repetitions));
        assertThat(ours).as("between").isBetween(byLoad, byRepetitions);
        assertThat(byLoad)
                .as("Reynolds 2006, leg press; coefficients from memory")
                .isGreaterThan(ours / factor);
        assertThat(byRepetitions)
                .as("through Richens 2014 and Hoeger 1990; our curve")
                .isLessThan(ours * factor);
        row("leg press, middle of two kinds of study at " + repetitions + " repetitions", "")
                .source(
                        "Reynolds 2006 (coefficients from memory) and Richens 2014 with Hoeger 1990 (our curve through them); geometric mean computed")
                .value(Math.sqrt(byLoad * byRepetitions))
                .ours(ours)
                .within(0.006, "one exponential for the mean of two");
    }

    @ParameterizedTest
    @EnumSource
    void fallsFromOneAndItsSlopeIsItsOwn(ShareOfMaximum relation) {
        assertThat(relation.share(1))
                .as("one repetition is the most, whatever the fit says there")
                .isEqualTo(1);
        assertThat(relation.spread(1)).isZero();
        for (double n = 1.1; n <= 20; n += 0.5) {
            assertThat(relation.share(n)).isLessThan(relation.share(n - 0.1));
            assertThat(relation.spread(n)).isGreaterThan(relation.spread(n - 0.1));
            double step = 1e-5;
            double byHand = (Math.log(relation.curve(n - step)) - Math.log(relation.curve(n + step))) / (2 * step);
            assertThat(relation.fall(n)).isCloseTo(byHand, within(1e-6));
        }
        assertThat(relation.share(30)).as("no further than 20").isEqualTo(relation.share(20));
    }

    /** The mean absolute error of a centred normal is √(2/π) of its standard deviation. */
    @Test
    void theReservesErrorIsThePublishedOne() {
        row("reserve called 1 or 3, mean absolute error", "repetitions")
                .source("Refalo 2024, bench press, 0.65 ± 0.78; looked up")
                .value(0.65)
                .ours(Math.sqrt(2 / Math.PI) * new SetEnd.Called(3).toFailure(6).sd())
                .within(
                        0.15,
                        "seeded with the printed standard deviation 1.00 of the error itself, which gives 0.80; cut off at 0");
        assertThat(new SetEnd.Called(2).toFailure(8).mean())
                .as("10.2, and a little for what cannot be below none left")
                .isBetween(10.2, 10.3);
        assertThat(new SetEnd.Called(2).toFailure(14).sd())
                .isGreaterThan(new SetEnd.Called(2).toFailure(8).sd());
    }

    /** Leg press, ten done, two left: the reserve is the smallest part of what is not known (computed in the sources' notes: 21.6 %). */
    @Test
    void theReserveIsTheSmallestPart() {
        SetEnd.ToFailure toFailure = new SetEnd.Called(2).toFailure(10);
        double called = LEG_PRESS.fall(toFailure.mean()) * toFailure.sd();
        assertThat(called).isLessThan(0.03);
        assertThat(LEG_PRESS.spread(toFailure.mean())).isGreaterThan(5 * called);
        assertThat(Math.sqrt(Math.pow(LEG_PRESS.spread(12.2), 2) + 0.024 * 0.024 + 0.042 * 0.042 + 0.13 * 0.13))
                .isCloseTo(0.216, within(0.002));
    }
}
