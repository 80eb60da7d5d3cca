package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whole curves drawn have the covariance of the curve they are drawn from. */
class CurveDrawsTest {
    private static final Physique MAN = new Physique(Sex.MALE, 35, 80, 1.75);

    private static List<StrengthCurve> curves() {
        Prior knee = Prior.of(Action.KNEE_EXTENSION, MAN).orElseThrow();
        Prior hip = Prior.of(Action.HIP_EXTENSION, MAN).orElseThrow();
        Prior arm = Prior.of(Action.ELBOW_FLEXION, MAN).orElseThrow();
        BentCurve bent = BentCurve.of(
                knee,
                List.of(
                        new IsometricTest(Math.toRadians(40), 0.9 * knee.held(Math.toRadians(40)), 0.08),
                        new IsometricTest(Math.toRadians(85), 1.2 * knee.held(Math.toRadians(85)), 0.12)));
        return List.of(knee, hip, arm, bent);
    }

    /** Σ ℓ_k(x) ℓ_k(y) against the covariance itself; straight lines between angles 2.5° apart miss by up to 1 % of the variances. */
    @Test
    void theColumnsMakeTheCovariance() {
        for (StrengthCurve curve : curves()) {
            CurveDraws draws = CurveDraws.of(curve);
            assertThat(draws.dimensions()).isBetween(2, 25);
            AngleRange range = curve.angles();
            for (double x = range.low(); x < range.high(); x += 0.17) {
                for (double y = range.low(); y < range.high(); y += 0.23) {
                    double sum = 0;
                    for (int k = 0; k < draws.dimensions(); k++) {
                        sum += draws.column(k, x) * draws.column(k, y);
                    }
                    double sds = curve.logSd(x) * curve.logSd(y);
                    assertThat(sum).isCloseTo(curve.logCovariance(x, y), within(0.01 * sds));
                }
            }
        }
    }

    @Test
    void theMiddleDrawIsTheCurveItself() {
        for (StrengthCurve curve : curves()) {
            CurveDraws draws = CurveDraws.of(curve);
            StrengthCurve same = draws.draw(new double[draws.dimensions()], 0);
            double angle = (curve.angles().low() + curve.angles().high()) / 2;
            assertThat(same.held(angle)).isEqualTo(curve.held(angle));
            assertThat(same.atSpeed(angle, 1)).isEqualTo(curve.atSpeed(angle, 1));
            assertThat(same.known(angle, 0)).isEqualTo(curve.known(angle, 0));
            assertThat(same.logSd(angle)).isZero();
        }
    }

    /** A draw is the given curve times its factor, in every way of asking for it. */
    @Test
    void everyWayOfAskingGivesTheSame() {
        CurveDraws draws = CurveDraws.of(curves().get(3));
        double[] z = new double[draws.dimensions()];
        java.util.Arrays.fill(z, 0.7);
        VariedCurve drawn = (VariedCurve) draws.draw(z, 0);
        double[] angles = {0.1, 0.9, 1.7};
        double[][] out = new double[2][3];
        drawn.fill(angles, new double[][] {{0, 0, 0}, {2, 2, 2}}, out);
        double[] row = new double[3];
        drawn.fill(angles, new double[] {2, 2, 2}, row);
        for (int i = 0; i < 3; i++) {
            assertThat(out[0][i]).isCloseTo(drawn.held(angles[i]), within(1e-12 * out[0][i]));
            assertThat(out[1][i]).isCloseTo(drawn.atSpeed(angles[i], 2), within(1e-12 * out[1][i]));
            assertThat(row[i]).isCloseTo(out[1][i], within(1e-12 * out[1][i]));
            double log = 0;
            for (int k = 0; k < z.length; k++) {
                log += 0.7 * draws.column(k, angles[i]);
            }
            assertThat(Math.log(drawn.factor(angles[i]))).isCloseTo(log, within(0.01));
        }
    }

    @Test
    void aCertainCurveTakesNoNumbers() {
        DrawnCurve certain = DrawnCurve.flat(100, new AngleRange(0, 2), 0, new SpeedLaw.AnySpeed());
        assertThat(CurveDraws.of(certain).dimensions()).isZero();
        DrawnCurve unsure = DrawnCurve.flat(100, new AngleRange(0, 2), 0.2, new SpeedLaw.AnySpeed());
        assertThat(CurveDraws.of(unsure).dimensions()).isEqualTo(1);
    }
}
