package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import org.junit.jupiter.api.Test;

/** Where inertia changes on the way: a bead in a bowl, from x = 0.5 m to its lowest place. */
class BeadTest {
    private static final double FROM = 0.5;
    private static final Bead BEAD = new Bead(2, 1.4);

    @Test
    void arrivesWithTheSpeedOfItsHeightAfterAQuarterOfItsPeriod() {
        Outcome outcome = LetGo.of(BEAD, Release.held(FROM));
        double g = Constants.STANDARD_GRAVITY;
        // steps are held to 1e-11
        assertThat(outcome.arrivalSpeed()).isCloseTo(Math.sqrt(2 * g * 1.4 * FROM * FROM), within(1e-9));
        assertThat(outcome.end().time()).isCloseTo(quarter(g), within(1e-9));
        assertThat(outcome.energy().error()).isLessThan(1e-10);
    }

    /** ∫ √(1 + 4a²x²) / √(2ga(A² − x²)) dx with x = A sin t: smooth and periodic, so that the midpoint rule is exact to rounding. */
    private static double quarter(double g) {
        int steps = 400;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double x = FROM * Math.sin((i + 0.5) * Math.PI / 2 / steps);
            sum += Math.sqrt(1 + 4 * 1.4 * 1.4 * x * x);
        }
        return sum * Math.PI / 2 / steps / Math.sqrt(2 * g * 1.4);
    }

    /** The control: without the term of the changing inertia the account of energy would be open by more than is allowed. */
    @Test
    void aForgottenSlopeOfTheInertiaIsFound() {
        LoneMachine wrong = new Wrapped(BEAD) {
            @Override
            public double inertiaSlope(double x) {
                return 0;
            }
        };
        assertThat(LetGo.of(wrong, Release.held(FROM)).energy().closes()).isFalse();
    }
}
