package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Peaks, times and places of strokes. */
class StrokesTest {
    @Test
    void thePeakNearTheBottomIsNoLessThanAFineScanFinds() {
        Random random = new Random(7);
        for (int t = 0; t < 200; t++) {
            double down = 0.5 + 3 * random.nextDouble();
            double up = 0.5 + 3 * random.nextDouble();
            Flowing.Turn turn = Flowing.Turn.values()[t % 3];
            Flowing flowing = new Flowing(down, up, turn);
            double peak = flowing.peakNearBottom(0.4);
            double scanned = 0;
            double[] fraction = new double[2001];
            for (int i = 0; i < fraction.length; i++) {
                fraction[i] = 0.5 * i / 2000;
            }
            for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
                StrokeMotion motion = flowing.along(phase, fraction, 0.4);
                for (int i = 0; i < fraction.length; i++) {
                    scanned = Math.max(scanned, Math.abs(motion.acceleration(i)));
                }
            }
            // a scan in 2001 steps misses a smooth peak by a few millionths; in equal steps of travel most at rest
            assertThat(peak).isBetween(scanned * (1 - 1e-12), scanned * (1 + 1e-3));
        }
    }

    @Test
    void aPeakWhereTheLeadingCoefficientVanishesIsStillFound() {
        // at the top −12 D/T²: the jerk is 24 − 72 τ, so the peak is at 1/3, and 4 D/T² high
        assertThat(new QuinticStroke(1, 1, 0, -12).peakNearBottom()).isCloseTo(4, within(1e-12));
        assertThat(new QuinticStroke(1, 1, 0, -12 * (1 + 1e-15)).peakNearBottom())
                .isCloseTo(4, within(1e-12));
    }

    @Test
    void positionAndTimeInvertEachOtherForEveryTurn() {
        for (Flowing.Turn turn : Flowing.Turn.values()) {
            Flowing flowing = new Flowing(5, 2, turn);
            double[] fraction = {0, 1e-9, 1e-4, 0.3, 0.5, 0.9, 1 - 1e-6, 1};
            for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
                StrokeMotion motion = flowing.along(phase, fraction, 0.4);
                for (int i = 1; i < fraction.length - 1; i++) {
                    assertThat(phase.sense() * motion.speed(i)).isPositive();
                }
                assertThat(motion.speed(0)).isZero();
                // the sum of the polynomial's coefficients at the far end
                assertThat(motion.speed(fraction.length - 1)).isCloseTo(0, within(1e-14));
            }
        }
    }

    @Test
    void aBouncesSecondsAreTheTimesItsSpeedsTake() {
        Bounce bounce = new Bounce(0.40, 0.30, 0.20);
        Tempo.Seconds seconds = bounce.seconds(0.25);
        // outside the turn at constant speed; inside it the speed changes by 3.5 m/s²
        assertThat(seconds.lowering()).isCloseTo((0.25 - 0.16 / 7) / 0.40 + 0.40 / 3.5, within(1e-12));
        assertThat(seconds.lifting()).isCloseTo((0.25 - 0.09 / 7) / 0.30 + 0.30 / 3.5, within(1e-12));
    }

    @Test
    void theTurnOfABounceTakesItsStatedTime() {
        Bounce bounce = new Bounce(0.40, 0.30, 0.20);
        double turning = (0.40 + 0.30) / bounce.acceleration();
        assertThat(turning).isCloseTo(0.20, within(1e-12));
    }

    @Test
    void aPlaceOutsideTheStrokeIsRefusedNotClamped() {
        PressTask task = Trials.task();
        RailStroke stroke = task.ownStroke();
        PressMotion.Seated seated =
                new PressMotion.Seated(task.sled().rail(), task.stance().seat(), task.legs());
        double[] below = {stroke.bottom() - 1e-6, stroke.top()};
        double[] above = {stroke.bottom(), stroke.top() + 1e-6};
        for (double[] plate : new double[][] {below, above}) {
            assertThatThrownBy(() -> PressMotion.of(stroke, plate, task.tempo(), seated))
                    .isInstanceOfSatisfying(
                            Refusal.class,
                            refusal -> assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS));
        }
    }

    @Test
    void equalLimbsCountPositionsByTheLeft() {
        assertThat(Trials.task().ownStroke().reference()).isZero();
    }

    @Test
    void theLegsAnglesRunOneWayBetweenTheirTurningPlaces() {
        PressTask task = Trials.task();
        LegOnPlate leg = task.legs().get(0);
        double[] places = leg.turningPlaces();
        // thigh square to the rail: knee one thigh toward the head, and the shank from there to the ankle
        double thigh = leg.plateAt(leg.kneeAt(places[0]));
        assertThat(thigh).isCloseTo(places[0], within(1e-12));
        double knee = leg.kneeAt(places[0]);
        Vec along = leg.alongThigh(places[0], new Vec(Math.cos(knee), Math.sin(knee)));
        // a cosine near 150° of knee flexion loses a digit or two
        assertThat(along.x()).isCloseTo(0, within(1e-12));
        assertThat(along.y()).isCloseTo(1, within(1e-12));
        // this shank is longer than the thigh, so it stands square nowhere with the ankle on the head's side
        assertThat(places[1]).isNaN();
    }
}
