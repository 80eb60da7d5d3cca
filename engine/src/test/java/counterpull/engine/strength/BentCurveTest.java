package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BentCurveTest {
    private static final PublishedCurve GIVEN =
            PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.FEMALE, 45, 66, 1.68));
    private static final double EXACT = 1e-6;

    private static IsometricTest test(double degrees, double ratio, double relativeSd) {
        double angle = Math.toRadians(degrees);
        return new IsometricTest(angle, ratio * GIVEN.held(angle), relativeSd);
    }

    private static List<IsometricTest> random(Random random, int count) {
        List<IsometricTest> tests = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            tests.add(
                    test(10 + 100 * random.nextDouble(), 0.4 + random.nextDouble(), 0.02 + 0.2 * random.nextDouble()));
        }
        return tests;
    }

    @Test
    void withoutATestItIsTheGivenCurve() {
        BentCurve curve = BentCurve.of(GIVEN, List.of());
        for (double angle = 0; angle <= Math.toRadians(110); angle += 0.02) {
            assertThat(curve.held(angle)).isEqualTo(GIVEN.held(angle));
            assertThat(curve.logSd(angle)).isEqualTo(GIVEN.logSd(angle));
        }
        assertThat(curve.peak()).isEqualTo(GIVEN.peak());
        assertThat(curve.source()).isEqualTo(GIVEN.source());
    }

    @Test
    void anExactTestIsReproduced() {
        IsometricTest low = test(30, 0.5, EXACT);
        IsometricTest high = test(90, 0.8, EXACT);
        BentCurve curve = BentCurve.of(GIVEN, List.of(low, high));
        for (IsometricTest test : curve.tests()) {
            assertThat(curve.held(test.angle()) / test.torque())
                    .as("to the order of the noise over the prior spread, squared")
                    .isCloseTo(1, within(1e-8));
            assertThat(curve.logSd(test.angle())).isLessThan(2 * EXACT);
        }
    }

    /** One test, in closed form: m = y c / (c + n), variance c n / (c + n), c the prior variance, n the noise. */
    @Test
    void oneTestInClosedForm() {
        BentCurve curve = BentCurve.of(GIVEN, List.of(test(60, 0.6, 0.121)));
        double angle = Math.toRadians(60);
        double prior = GIVEN.logCovariance(angle, angle);
        double noise = Math.log(1 + 0.121 * 0.121);
        assertThat(curve.bend(angle)).isCloseTo(Math.log(0.6) * prior / (prior + noise), within(1e-12));
        assertThat(curve.logSd(angle)).isCloseTo(Math.sqrt(prior * noise / (prior + noise)), within(1e-12));
        double there = Math.toRadians(10);
        double shared = GIVEN.logCovariance(angle, there);
        assertThat(curve.bend(there)).isCloseTo(Math.log(0.6) * shared / (prior + noise), within(1e-12));
    }

    /** Independent route: one test after the other, each a rank-one update of mean and covariance over a grid. */
    @Test
    void agreesWithTakingInOneTestAfterTheOther() {
        Random random = new Random(20071);
        for (int trial = 0; trial < 50; trial++) {
            List<IsometricTest> tests = random(random, 1 + random.nextInt(12));
            BentCurve curve = BentCurve.of(GIVEN, tests);
            OneByOne other = new OneByOne(tests);
            for (int i = 0; i < other.angle.length; i++) {
                double bend = Math.max(other.lowest, Math.min(other.highest, other.mean[i]));
                assertThat(curve.bend(other.angle[i])).isCloseTo(bend, within(1e-9));
                assertThat(curve.logSd(other.angle[i])).isCloseTo(Math.sqrt(other.covariance[i][i]), within(1e-9));
                assertThat(curve.logCovariance(other.angle[i], other.angle[0]))
                        .isCloseTo(other.covariance[i][0], within(1e-11));
            }
        }
    }

    private static final class OneByOne {
        final double[] angle;
        final double[] mean;
        final double[][] covariance;
        double lowest;
        double highest;

        OneByOne(List<IsometricTest> tests) {
            int grid = 23;
            int size = grid + tests.size();
            angle = new double[size];
            mean = new double[size];
            covariance = new double[size][size];
            for (int i = 0; i < size; i++) {
                angle[i] =
                        i < grid ? Math.toRadians(5.0 * i) : tests.get(i - grid).angle();
            }
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    covariance[i][j] = GIVEN.logCovariance(angle[i], angle[j]);
                }
            }
            for (int i = 0; i < tests.size(); i++) {
                take(grid + i, tests.get(i));
            }
        }

        private void take(int at, IsometricTest test) {
            double ratio = Math.log(test.torque() / GIVEN.held(test.angle()));
            lowest = Math.min(lowest, ratio);
            highest = Math.max(highest, ratio);
            double total = covariance[at][at] + Math.log(1 + test.relativeSd() * test.relativeSd());
            double[] gain = new double[mean.length];
            for (int i = 0; i < gain.length; i++) {
                gain[i] = covariance[i][at] / total;
            }
            double[] row = covariance[at].clone();
            double surprise = ratio - mean[at];
            for (int i = 0; i < gain.length; i++) {
                mean[i] += gain[i] * surprise;
                for (int j = 0; j < gain.length; j++) {
                    covariance[i][j] -= gain[i] * row[j];
                }
            }
        }
    }

    @Test
    void anotherTestWidensTheBandNowhereAndNarrowsItAtItself() {
        Random random = new Random(7);
        for (int trial = 0; trial < 30; trial++) {
            List<IsometricTest> tests = random(random, 8);
            for (int count = 1; count <= tests.size(); count++) {
                BentCurve before = BentCurve.of(GIVEN, tests.subList(0, count - 1));
                BentCurve after = BentCurve.of(GIVEN, tests.subList(0, count));
                for (double angle = -0.2; angle < 2.2; angle += 0.05) {
                    assertThat(after.logSd(angle)).isLessThanOrEqualTo(before.logSd(angle) + 1e-12);
                }
                double own = tests.get(count - 1).angle();
                assertThat(after.logSd(own)).isLessThan(before.logSd(own));
            }
        }
    }

    @Test
    void aTestTellsMostWhereItWasTaken() {
        BentCurve curve = BentCurve.of(GIVEN, List.of(test(60, 0.7, 0.05)));
        double before = 0;
        for (int degrees = 60; degrees <= 110; degrees += 5) {
            double now = curve.logSd(Math.toRadians(degrees));
            assertThat(now).isGreaterThan(before);
            before = now;
        }
        assertThat(before).as("and something everywhere").isLessThan(GIVEN.logSd(Math.toRadians(110)));
    }

    @Test
    void theOrderOfTestsChangesNotOneDigit() {
        Random random = new Random(99);
        List<IsometricTest> tests = random(random, 7);
        BentCurve curve = BentCurve.of(GIVEN, tests);
        Collections.shuffle(tests, random);
        BentCurve shuffled = BentCurve.of(GIVEN, tests);
        for (double angle = 0; angle < 1.9; angle += 0.01) {
            assertThat(shuffled.held(angle)).isEqualTo(curve.held(angle));
            assertThat(shuffled.logSd(angle)).isEqualTo(curve.logSd(angle));
        }
    }

    @Test
    void itNeverPassesTheMostExtremeTestNorTheGivenCurve() {
        Random random = new Random(4711);
        for (int trial = 0; trial < 200; trial++) {
            List<IsometricTest> tests = random(random, 1 + random.nextInt(5));
            BentCurve curve = BentCurve.of(GIVEN, tests);
            double low = 0;
            double high = 0;
            for (IsometricTest test : tests) {
                double ratio = Math.log(test.torque() / GIVEN.held(test.angle()));
                low = Math.min(low, ratio);
                high = Math.max(high, ratio);
            }
            for (double angle = 0; angle < 1.92; angle += 0.02) {
                assertThat(curve.bend(angle)).isBetween(low, high);
            }
        }
    }

    @Test
    void twoEqualTestsDoNotOvershootBetweenThem() {
        BentCurve curve = BentCurve.of(GIVEN, List.of(test(30, 0.6, EXACT), test(90, 0.6, EXACT)));
        for (int degrees = 30; degrees <= 90; degrees++) {
            double ratio = curve.held(Math.toRadians(degrees)) / GIVEN.held(Math.toRadians(degrees));
            assertThat(ratio).isBetween(0.6 - 1e-6, 0.6 + 0.02);
        }
    }

    @Test
    void repeatsAtOneAngleAreSafeAndSayTheirMean() {
        List<IsometricTest> exact = Collections.nCopies(40, test(70, 0.8, EXACT));
        BentCurve sure = BentCurve.of(GIVEN, exact);
        assertThat(sure.held(Math.toRadians(70)) / GIVEN.held(Math.toRadians(70)))
                .isCloseTo(0.8, within(1e-6));
        List<IsometricTest> apart = new ArrayList<>(Collections.nCopies(50, test(70, 0.7, 0.1)));
        apart.addAll(Collections.nCopies(50, test(70, 0.9, 0.1)));
        BentCurve mean = BentCurve.of(GIVEN, apart);
        double middle = Math.log(Math.sqrt(0.7 * 0.9));
        assertThat(mean.bend(Math.toRadians(70)))
                .as("geometric mean, less the prior's pull of noise / 100 over the prior variance")
                .isCloseTo(middle, within(0.001));
        assertThat(mean.logSd(Math.toRadians(70))).isCloseTo(0.01, within(1e-4));
    }

    @Test
    void contradictingExactTestsStayBetweenThemselves() {
        BentCurve curve =
                BentCurve.of(GIVEN, List.of(test(70, 0.5, EXACT), test(70, 0.9, EXACT), test(70.01, 0.6, EXACT)));
        for (double angle = 0; angle < 1.92; angle += 0.01) {
            assertThat(curve.bend(angle)).isBetween(Math.log(0.5), 0.0);
            assertThat(curve.logSd(angle)).isFinite();
        }
    }

    @Test
    void notKnownIsMeasuredAgainstTheBentCurvesOwnPeak() {
        BentCurve curve = BentCurve.of(GIVEN, List.of(test(60, 0.4, 0.05), test(100, 0.4, 0.05)));
        assertThat(curve.peak()).isLessThan(0.6 * GIVEN.peak());
        double angle = Math.toRadians(60);
        double fast = 0;
        while (curve.atSpeed(angle, fast) >= 0.15 * GIVEN.peak()) {
            fast += 0.01;
        }
        assertThat(curve.known(angle, fast))
                .as("below 15 %% of the given peak, above 15 %% of its own")
                .isTrue();
    }

    @Test
    void aTestBeyondThePublishedAnglesCarriesTheCurveThere() {
        PublishedCurve hip = PublishedCurve.of(Action.HIP_EXTENSION, new Physique(Sex.MALE, 30, 80, 1.75));
        double deep = Math.toRadians(140);
        BentCurve curve = BentCurve.of(hip, List.of(new IsometricTest(deep, 120, EXACT)));
        assertThat(curve.known(deep, 0)).isTrue();
        assertThat(curve.held(deep)).isCloseTo(120, within(1e-4));
        assertThat(curve.known(Math.toRadians(141), 0)).isFalse();
        double end = Math.toRadians(110);
        assertThat(curve.held(end))
                .as("and the published part is not thrown about")
                .isBetween(80.0, 190.0);
    }

    @Test
    void aTestOnATailIsRefused() {
        PublishedCurve calf = PublishedCurve.of(Action.ANKLE_PLANTARFLEXION, new Physique(Sex.MALE, 21.5, 80, 1.75));
        List<IsometricTest> tail = List.of(new IsometricTest(Math.toRadians(-40), 30, 0.1));
        assertThatThrownBy(() -> BentCurve.of(calf, tail))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("15 %");
    }

    @Test
    void badTestsAreRefused() {
        assertThatThrownBy(() -> new IsometricTest(1, 0, 0.1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new IsometricTest(1, 100, 0)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new IsometricTest(1, 100, 1.01)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new IsometricTest(Double.NaN, 100, 0.1)).isInstanceOf(Refusal.class);
    }

    @Test
    void aDrawnCurveBendsToo() {
        DrawnCurve drawn = DrawnCurve.flat(100, new AngleRange(0, 2), 0.3, new SpeedLaw.AnySpeed());
        BentCurve curve = BentCurve.of(drawn, new BendAssumptions(0.3, 0, 1), List.of(new IsometricTest(1, 80, EXACT)));
        assertThat(curve.held(0.2))
                .as("no spread of shape: the whole curve moves")
                .isCloseTo(80, within(1e-4));
    }
}
