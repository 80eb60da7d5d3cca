package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import org.junit.jupiter.api.Test;

class DrawnCurveTest {
    private static final SpeedLaw ANY = new SpeedLaw.AnySpeed();

    @Test
    void passesItsPointsInStraightLines() {
        DrawnCurve curve = DrawnCurve.through(new double[] {0, 1, 2}, new double[] {50, 150, 90}, 0.1, ANY);
        assertThat(curve.held(0)).isEqualTo(50);
        assertThat(curve.held(0.25)).isCloseTo(75, within(1e-12));
        assertThat(curve.held(1)).isEqualTo(150);
        assertThat(curve.held(1.5)).isCloseTo(120, within(1e-12));
        assertThat(curve.held(9)).isEqualTo(90);
        assertThat(curve.peak()).isEqualTo(150);
    }

    @Test
    void takesTheSpeedOfAPublishedCurve() {
        PublishedCurve published = PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.MALE, 25, 80, 1.8));
        DrawnCurve curve = DrawnCurve.flat(100, new AngleRange(0, 2), 0.1, published);
        double share = published.atSpeed(1, 2) / published.held(1);
        assertThat(curve.atSpeed(1, 2)).isCloseTo(100 * share, within(1e-10));
    }

    @Test
    void laterChangesToTheGivenArraysDoNotReachIt() {
        double[] angle = {0, 1};
        double[] torque = {10, 20};
        DrawnCurve curve = DrawnCurve.through(angle, torque, 0, ANY);
        angle[0] = -9;
        torque[1] = 999;
        assertThat(curve.held(1)).isEqualTo(20);
        assertThat(curve.angles().low()).isZero();
    }

    @Test
    void refusesWhatIsNoCurve() {
        assertRefused(new double[] {0}, new double[] {10});
        assertRefused(new double[] {0, 1}, new double[] {10});
        assertRefused(new double[] {0, 0}, new double[] {10, 10});
        assertRefused(new double[] {1, 0}, new double[] {10, 10});
        assertRefused(new double[] {0, 1}, new double[] {10, 0});
        assertRefused(new double[] {0, Double.NaN}, new double[] {10, 10});
        assertThatThrownBy(() -> DrawnCurve.flat(10, new AngleRange(0, 1), -0.1, ANY))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new AngleRange(1, 1)).isInstanceOf(Refusal.class);
    }

    private static void assertRefused(double[] angle, double[] torque) {
        assertThatThrownBy(() -> DrawnCurve.through(angle, torque, 0.1, ANY)).isInstanceOf(Refusal.class);
    }
}
