package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every strength curve promises, of whatever kind. */
class StrengthCurveContractTest {
    private static final double DEGREE = Math.PI / 180;
    private static final double[] SPEEDS = {-8, -1, 0, 0.3, 1, 3, 9, 30};

    static List<StrengthCurve> curves() {
        List<StrengthCurve> curves = new ArrayList<>();
        for (Action action : Action.values()) {
            for (double age : new double[] {18, 21.5, 40, 60, 66, 72, 90}) {
                curves.add(Prior.of(action, new Physique(Sex.FEMALE, age, 60, 1.65))
                        .orElseThrow());
                curves.add(
                        Prior.of(action, new Physique(Sex.MALE, age, 85, 1.82)).orElseThrow());
            }
            curves.addAll(bent(action));
        }
        curves.add(DrawnCurve.flat(120, new AngleRange(0, 2), 0.1, new SpeedLaw.AnySpeed()));
        curves.add(DrawnCurve.flat(60, new AngleRange(0, 2), 0.3, new SpeedLaw.OneSpeed(1.2, 0.7)));
        curves.add(DrawnCurve.through(
                new double[] {0.1, 0.9, 1.0, 1.8}, new double[] {20, 180, 175, 90}, 0, new SpeedLaw.AnySpeed()));
        return curves;
    }

    private static List<StrengthCurve> bent(Action action) {
        Prior given = Prior.of(action, new Physique(Sex.FEMALE, 45, 70, 1.70)).orElseThrow();
        double middle = (given.angles().low() + given.angles().high()) / 2;
        IsometricTest weak = new IsometricTest(middle, 0.4 * given.held(middle), 0.121);
        IsometricTest strong = new IsometricTest(middle + 0.3, 1.5 * given.held(middle + 0.3), 0.08);
        // Hip flexion has no strength left at the high end of its angles: nothing there can be bent.
        double end = given.known(given.angles().high(), 0) ? given.angles().high() + 0.4 : middle + 0.1;
        IsometricTest beyond = new IsometricTest(end, 0.5 * given.peak(), 0.08);
        IsometricTest floor = IsometricTest.atLeast(middle - 0.1, 1.4 * given.held(middle - 0.1), 0.1);
        return List.of(
                BentCurve.of(given, List.of()),
                BentCurve.of(given, List.of(weak)),
                BentCurve.of(given, List.of(weak, weak, weak, strong)),
                BentCurve.of(given, List.of(strong, weak, beyond)),
                BentCurve.of(given, List.of(weak, floor)),
                BentCurve.of(given, List.of(floor, floor, beyond)));
    }

    private static double[] angles(StrengthCurve curve) {
        double low = curve.angles().low();
        double high = curve.angles().high();
        double[] angles = new double[181];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = low + (high - low) * i / (angles.length - 1);
        }
        return angles;
    }

    @ParameterizedTest
    @MethodSource("curves")
    void torqueIsNeverNegativeAndAlwaysFinite(StrengthCurve curve) {
        for (double angle = -3; angle <= 4; angle += DEGREE) {
            for (double speed : SPEEDS) {
                assertThat(curve.atSpeed(angle, speed)).isFinite().isNotNegative();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void itIsContinuousInAngle(StrengthCurve curve) {
        double step = 1e-7;
        for (double angle = -3; angle <= 4; angle += 0.37 * DEGREE) {
            double jump = Math.abs(curve.held(angle + step) - curve.held(angle));
            assertThat(jump).as("at %s rad", angle).isLessThan(100 * step * curve.peak());
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void itIsContinuousInSpeedAndNoFasterIsStronger(StrengthCurve curve) {
        for (double angle : angles(curve)) {
            double before = curve.held(angle);
            assertThat(curve.atSpeed(angle, -2)).as("lowering counts as held").isEqualTo(before);
            assertThat(curve.atSpeed(angle, 1e-9)).isCloseTo(before, within(1e-6 * curve.peak()));
            for (double speed = 0.5; speed < 20; speed += 0.5) {
                double now = curve.atSpeed(angle, speed);
                assertThat(now).isLessThanOrEqualTo(before * (1 + 1e-12));
                before = now;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void thePeakIsTheLargestHeldValueInsideItsAngles(StrengthCurve curve) {
        double largest = 0;
        for (double angle : angles(curve)) {
            largest = Math.max(largest, curve.held(angle));
        }
        assertThat(curve.peak()).isGreaterThanOrEqualTo(largest * (1 - 1e-12));
        assertThat(curve.peak())
                .as("181 angles miss no more than this, even at the corner where a bend is stopped")
                .isLessThan(largest * 1.01);
    }

    @ParameterizedTest
    @MethodSource("curves")
    void knownMeansInsideTheAnglesAndAboveFifteenPercent(StrengthCurve curve) {
        assertThat(curve.known(curve.angles().low() - 0.001, 0)).isFalse();
        assertThat(curve.known(curve.angles().high() + 0.001, 0)).isFalse();
        for (double angle : angles(curve)) {
            for (double speed : SPEEDS) {
                assertThat(curve.known(angle, speed)).isEqualTo(curve.atSpeed(angle, speed) >= 0.15 * curve.peak());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void aWholeRangeIsThePointsOneByOne(StrengthCurve curve) {
        double[] angles = {
            -3, curve.angles().low(), 0.2, 0.9, 0.9, 1.1, curve.angles().high(), 4
        };
        double[] out = new double[angles.length];
        curve.fill(angles, SPEEDS, out);
        for (int i = 0; i < out.length; i++) {
            if (curve.known(angles[i], SPEEDS[i])) {
                assertThat(out[i]).isEqualTo(curve.atSpeed(angles[i], SPEEDS[i]));
            } else {
                assertThat(out[i]).isNaN();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void theBandHoldsTheCurve(StrengthCurve curve) {
        for (double angle : angles(curve)) {
            assertThat(curve.logSd(angle)).isFinite().isNotNegative();
            assertThat(curve.held(angle)).isBetween(curve.lower90(angle), curve.upper90(angle));
            assertThat(curve.logCovariance(angle, 0.3)).isCloseTo(curve.logCovariance(0.3, angle), within(1e-15));
            double correlation = curve.logCovariance(angle, 0.3);
            assertThat(Math.abs(correlation)).isLessThanOrEqualTo(curve.logSd(angle) * curve.logSd(0.3) + 1e-12);
        }
        assertThat(curve.source()).isNotBlank().doesNotEndWith(".");
    }
}
