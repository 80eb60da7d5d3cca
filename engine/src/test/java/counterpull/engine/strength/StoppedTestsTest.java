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

/** What a test that was stopped early may and may not do to a curve. */
class StoppedTestsTest {
    private static final PublishedCurve GIVEN =
            PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.FEMALE, 45, 66, 1.68));
    /** Rounding in sums of a few terms below 1. */
    private static final double ROUNDING = 1e-12;

    private static IsometricTest reached(double degrees, double ratio, double relativeSd) {
        double angle = Math.toRadians(degrees);
        return new IsometricTest(angle, ratio * GIVEN.held(angle), relativeSd);
    }

    private static IsometricTest floor(double degrees, double ratio, double relativeSd) {
        double angle = Math.toRadians(degrees);
        return IsometricTest.atLeast(angle, ratio * GIVEN.held(angle), relativeSd);
    }

    private static IsometricTest random(Random random, IsometricTest.Meaning meaning) {
        double angle = Math.toRadians(10 + 100 * random.nextDouble());
        double ratio = Math.exp(1.6 * (random.nextDouble() - 0.5));
        double relativeSd = 0.02 + 0.2 * random.nextDouble();
        return new IsometricTest(angle, ratio * GIVEN.held(angle), relativeSd, meaning);
    }

    private static List<IsometricTest> random(Random random, int reached, int floors) {
        List<IsometricTest> tests = new ArrayList<>();
        for (int i = 0; i < reached; i++) {
            tests.add(random(random, IsometricTest.Meaning.REACHED));
        }
        for (int i = 0; i < floors; i++) {
            tests.add(random(random, IsometricTest.Meaning.AT_LEAST));
        }
        return tests;
    }

    private static BentCurve bent(List<IsometricTest> tests) {
        return BentCurve.of(GIVEN, tests);
    }

    private static List<IsometricTest> and(List<IsometricTest> tests, IsometricTest other) {
        List<IsometricTest> all = new ArrayList<>(tests);
        all.add(other);
        return all;
    }

    @Test
    void aFloorNeverLowersTheMeanAtItsAngle() {
        Random random = new Random(1812);
        for (int trial = 0; trial < 3000; trial++) {
            List<IsometricTest> before = random(random, random.nextInt(6), 0);
            IsometricTest floor = random(random, IsometricTest.Meaning.AT_LEAST);
            assertThat(bent(and(before, floor)).bend(floor.angle()))
                    .as("trial %s: %s then %s", trial, before, floor)
                    .isGreaterThanOrEqualTo(bent(before).bend(floor.angle()) - ROUNDING);
        }
    }

    /**
     * In the exact posterior a floor never lowers its own angle, whatever else is there. Several floors are matched one
     * by one, which is off by a few hundredths of a standard deviation; of that, less than one hundredth shows here.
     */
    @Test
    void oneFloorMoreAmongFloorsLowersItsAngleByLessThanAHundredthOfTheBand() {
        Random random = new Random(1816);
        for (int trial = 0; trial < 3000; trial++) {
            List<IsometricTest> before = random(random, random.nextInt(5), 1 + random.nextInt(3));
            IsometricTest floor = random(random, IsometricTest.Meaning.AT_LEAST);
            BentCurve without = bent(before);
            assertThat(bent(and(before, floor)).bend(floor.angle()))
                    .as("trial %s: %s then %s", trial, before, floor)
                    .isGreaterThanOrEqualTo(without.bend(floor.angle()) - 0.01 * without.logSd(floor.angle()));
        }
    }

    /** Without a test the covariance is positive everywhere, so that what raises one angle raises all. */
    @Test
    void floorsAloneLowerNothingAnywhere() {
        Random random = new Random(1813);
        for (int trial = 0; trial < 300; trial++) {
            BentCurve curve = bent(random(random, 0, 1 + random.nextInt(5)));
            for (double angle = 0; angle < 1.92; angle += 0.05) {
                assertThat(curve.held(angle)).isGreaterThanOrEqualTo(GIVEN.held(angle));
            }
        }
    }

    @Test
    void floorsWidenTheBandOfTheReachedTestsNowhere() {
        Random random = new Random(1814);
        for (int trial = 0; trial < 300; trial++) {
            List<IsometricTest> reached = random(random, random.nextInt(5), 0);
            BentCurve without = bent(reached);
            List<IsometricTest> all = new ArrayList<>(reached);
            all.addAll(random(random, 0, 1 + random.nextInt(4)));
            BentCurve with = bent(all);
            for (double angle = -0.2; angle < 2.2; angle += 0.05) {
                assertThat(with.logSd(angle)).isLessThanOrEqualTo(without.logSd(angle) + ROUNDING);
            }
        }
    }

    /** Why the promise is not made for one floor more among floors: it can lift belief off the edge of another. */
    @Test
    void oneFloorMoreAmongFloorsCanWidenTheBand() {
        IsometricTest edge = floor(60, 1.6, 0.01);
        IsometricTest vague = floor(60, 3, 0.3);
        double angle = Math.toRadians(60);
        assertThat(bent(List.of(edge, vague)).logSd(angle))
                .isGreaterThan(1.05 * bent(List.of(edge)).logSd(angle))
                .isLessThan(GIVEN.logSd(angle));
    }

    @Test
    void aFloorFarBelowBeliefChangesNothing() {
        List<IsometricTest> reached = List.of(reached(40, 1.2, 0.08), reached(80, 1.1, 0.08));
        BentCurve without = bent(reached);
        BentCurve with = bent(and(reached, floor(60, 0.3, 0.08)));
        for (double angle = -0.2; angle < 2.2; angle += 0.05) {
            assertThat(with.bend(angle))
                    .as("the floor is 15 standard deviations below")
                    .isCloseTo(without.bend(angle), within(ROUNDING));
            assertThat(with.logSd(angle)).isCloseTo(without.logSd(angle), within(ROUNDING));
        }
    }

    @Test
    void aFloorFarAbovePullsUpToAboutItselfAndNoHarderThanAReachedTest() {
        double angle = Math.toRadians(60);
        BentCurve stopped = bent(List.of(floor(60, 4, 0.05)));
        BentCurve reached = bent(List.of(reached(60, 4, 0.05)));
        assertThat(stopped.held(angle) / GIVEN.held(angle)).isBetween(3.8, 4.2);
        assertThat(stopped.bend(angle))
                .as("belief above the floor weighs little and is not pulled down")
                .isBetween(reached.bend(angle), reached.bend(angle) + 0.01);
        assertThat(stopped.logSd(angle)).isGreaterThanOrEqualTo(reached.logSd(angle));
    }

    @Test
    void aHigherFloorMeansNoLess() {
        double angle = Math.toRadians(60);
        double before = bent(List.of(reached(90, 0.8, 0.08))).bend(angle);
        for (double ratio = 0.2; ratio < 5; ratio *= 1.05) {
            double now = bent(List.of(reached(90, 0.8, 0.08), floor(60, ratio, 0.08)))
                    .bend(angle);
            assertThat(now).isGreaterThanOrEqualTo(before - ROUNDING);
            before = now;
        }
        assertThat(before).as("and in the end it pulls").isGreaterThan(Math.log(2));
    }

    @Test
    void repeatsOfOneFloorStayFinite() {
        double angle = Math.toRadians(70);
        for (double relativeSd : new double[] {1e-6, 0.05, 1}) {
            BentCurve curve = bent(Collections.nCopies(30, floor(70, 1.3, relativeSd)));
            assertThat(curve.bend(angle)).isBetween(0.0, 1.0);
            assertThat(curve.logSd(angle)).isPositive().isLessThan(GIVEN.logSd(angle));
        }
        BentCurve sure = bent(Collections.nCopies(30, floor(70, 1.3, 1e-6)));
        assertThat(sure.bend(angle)).isGreaterThan(Math.log(1.3));
    }

    @Test
    void aFloorThatContradictsAReachedTestGivesWay() {
        double angle = Math.toRadians(70);
        BentCurve sure = bent(List.of(reached(70, 0.8, 1e-6), floor(70, 1.2, 0.1)));
        assertThat(sure.held(angle) / GIVEN.held(angle)).isCloseTo(0.8, within(1e-4));
        BentCurve both = bent(List.of(reached(70, 0.8, 1e-6), floor(70, 1.2, 1e-6)));
        assertThat(both.bend(angle)).isBetween(Math.log(0.8), Math.log(1.2));
        for (double at = 0; at < 1.92; at += 0.05) {
            assertThat(both.logSd(at)).isFinite();
        }
    }

    /** The bound as the class states it, computed beside it. */
    @Test
    void theMeanKeepsItsBounds() {
        Random random = new Random(1815);
        for (int trial = 0; trial < 300; trial++) {
            List<IsometricTest> reached = random(random, random.nextInt(4), 0);
            List<IsometricTest> floors = random(random, 0, 1 + random.nextInt(3));
            List<IsometricTest> all = new ArrayList<>(reached);
            all.addAll(floors);
            BentCurve curve = bent(all);
            double low = -0.0;
            double high = 0;
            for (IsometricTest test : reached) {
                double ratio = Math.log(test.torque() / GIVEN.held(test.angle()));
                low = Math.min(low, ratio);
                high = Math.max(high, ratio);
            }
            for (IsometricTest floor : floors) {
                high = Math.max(high, curve.bend(floor.angle()));
            }
            for (double angle = 0; angle < 1.92; angle += 0.02) {
                assertThat(curve.bend(angle)).isBetween(low, high + ROUNDING);
            }
        }
    }

    @Test
    void aFloorDoesNotExtendTheAngles() {
        PublishedCurve hip = PublishedCurve.of(Action.HIP_EXTENSION, new Physique(Sex.MALE, 30, 80, 1.75));
        double deep = Math.toRadians(140);
        BentCurve stopped = BentCurve.of(hip, List.of(IsometricTest.atLeast(deep, 120, 0.08)));
        assertThat(stopped.known(deep, 0)).isFalse();
        assertThat(stopped.angles()).isEqualTo(hip.angles());
        BentCurve measured = BentCurve.of(hip, List.of(new IsometricTest(deep, 120, 0.08)));
        assertThat(measured.known(deep, 0)).isTrue();
    }

    @Test
    void aFloorOnATailIsRefusedLikeATest() {
        PublishedCurve calf = PublishedCurve.of(Action.ANKLE_PLANTARFLEXION, new Physique(Sex.MALE, 21.5, 80, 1.75));
        List<IsometricTest> tail = List.of(IsometricTest.atLeast(Math.toRadians(-40), 30, 0.1));
        assertThatThrownBy(() -> BentCurve.of(calf, tail))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("15 %");
    }

    @Test
    void theOrderOfTestsChangesNotOneDigit() {
        Random random = new Random(99);
        List<IsometricTest> tests = random(random, 3, 4);
        BentCurve curve = bent(tests);
        Collections.shuffle(tests, random);
        BentCurve shuffled = bent(tests);
        for (double angle = 0; angle < 1.9; angle += 0.01) {
            assertThat(shuffled.held(angle)).isEqualTo(curve.held(angle));
            assertThat(shuffled.logSd(angle)).isEqualTo(curve.logSd(angle));
        }
    }

    @Test
    void withoutAnySpreadAFloorChangesNothing() {
        DrawnCurve drawn = DrawnCurve.flat(100, new AngleRange(0, 2), 0, new SpeedLaw.AnySpeed());
        BentCurve curve =
                BentCurve.of(drawn, new BendAssumptions(0, 0, 1), List.of(IsometricTest.atLeast(1, 180, 0.1)));
        assertThat(curve.held(1)).isCloseTo(100, within(1e-9));
    }

    @Test
    void theSourceSaysHowManyWereStopped() {
        assertThat(bent(List.of(reached(60, 1, 0.1), reached(80, 1, 0.1), floor(90, 1, 0.1)))
                        .source())
                .startsWith("2 strength tests and one floor (a test stopped early) of this person, between and beyond");
        assertThat(bent(List.of(reached(60, 1, 0.1), floor(80, 1, 0.1), floor(90, 1, 0.1)))
                        .source())
                .startsWith("one strength test and 2 floors (tests stopped early) of this person");
        assertThat(bent(List.of(floor(80, 1, 0.1))).source())
                .startsWith("one floor (a test stopped early) of this person");
    }
}
