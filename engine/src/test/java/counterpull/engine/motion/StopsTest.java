package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The stop of a range is always the next one on the shallower side, whichever way the tape reads. */
class StopsTest {
    private static final SeatSetting SEAT = new SeatSetting("back 2", 0.30, 0.55, 0, 2.3);

    private static Rail rail(int tapeSense) {
        return new Rail(0.7, Ride.PLATE, 0, tapeSense);
    }

    @Test
    void aTapeThatReadsHigherAsThePlateMovesAway() {
        // readings 0.20, 0.30, 0.40 m are 0.45, 0.55, 0.65 m from the hip
        Stops stops = new Stops(0.40, 0.20, 0.30);
        assertThat(stops.nextShallower(0.551, SEAT, rail(1))).isCloseTo(0.65, within(1e-12));
        assertThat(stops.nextShallower(0.55, SEAT, rail(1))).isCloseTo(0.55, within(1e-12));
        assertThat(stops.shallowerThan(0.50, SEAT, rail(1))).containsExactly(new double[] {0.55, 0.65}, within(1e-12));
    }

    @Test
    void aTapeThatReadsLowerAsThePlateMovesAway() {
        // readings 0.20, 0.30, 0.40 m are 0.65, 0.55, 0.45 m from the hip
        Stops stops = new Stops(0.20, 0.30, 0.40);
        assertThat(stops.nextShallower(0.46, SEAT, rail(-1))).isCloseTo(0.55, within(1e-12));
    }

    @Test
    void noStopIsShallowEnough() {
        Stops stops = new Stops(0.20);
        assertThatThrownBy(() -> stops.nextShallower(0.50, SEAT, rail(1)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.NO_STOP));
    }

    /** Random stops: none lies between the person's own bottom and the one taken, and it is never deeper. */
    @Test
    void neverDeeperAndNeverFartherThanNeeded() {
        Random random = new Random(5);
        for (int k = 0; k < 500; k++) {
            double[] marks = random.doubles(6, 0, 0.6).toArray();
            Rail rail = rail(random.nextBoolean() ? 1 : -1);
            double bottom = 0.3 + 0.3 * random.nextDouble();
            double[] found = new Stops(marks).shallowerThan(bottom, SEAT, rail);
            double nearest = Double.POSITIVE_INFINITY;
            for (double mark : marks) {
                double at = 0.55 + rail.tapeSense() * (mark - 0.30);
                nearest = at >= bottom ? Math.min(nearest, at) : nearest;
            }
            if (nearest < Double.POSITIVE_INFINITY) {
                assertThat(found[0]).isCloseTo(nearest, within(1e-12));
            } else {
                assertThat(found).isEmpty();
            }
        }
    }
}
