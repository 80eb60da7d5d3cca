package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import counterpull.engine.profile.Trials;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bottom goes to the next stop on the shallower side, whichever way the tape reads. */
class StopRoundingTest {
    // one metre and one sum
    private static final double ROUNDING = 1e-12;

    /** Pair: reading 1 m at 0.9 m from hip to plate. */
    private static PressTask task(int sense, double... distances) {
        SeatSetting seat = new SeatSetting("seat", 1, 0.9, 0, Math.toRadians(135));
        double[] marks = new double[distances.length];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = 1 + sense * (distances[i] - 0.9);
        }
        PressTask task = Trials.task();
        Rail rail = new Rail(task.sled().rail().angle(), Ride.PLATE, 0, sense);
        Stance stance = new Stance(seat, task.stance().row(), 0.5, task.stance().hipShift());
        return Trials.with(task, new Sled(rail, task.sled().carriage(), new Stops(marks)))
                .with(stance);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void theNextStopOnTheShallowerSideIsTaken(int sense) {
        // worked example B: the own bottom is 0.605522 + 0.06825 = 0.673772 m
        PressTask task = task(sense, 0.60, 0.66, 0.72, 0.70, 0.80);
        assertThat(task.ownStroke().bottom()).isCloseTo(0.673772, within(5.1e-7));
        assertThat(task.stroke().bottom()).isCloseTo(0.70, within(ROUNDING));
        PressProfile profile = PressProfile.of(task);
        assertThat(profile.plate(0)).isCloseTo(0.70, within(ROUNDING));
        assertThat(profile.mark(0)).isCloseTo(1 + sense * (0.70 - 0.9), within(ROUNDING));
        assertThat(profile.limbs().get(0).angle(Joint.KNEE, 0)).isLessThan(Math.toRadians(90));
        double[] further = task.sled()
                .stops()
                .shallowerThan(0.673772, task.stance().seat(), task.sled().rail());
        assertThat(further).hasSize(3);
        assertThat(further[2]).isCloseTo(0.80, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void aStopAtTheBottomItselfCountsAndOnlyDeeperOnesAreRefused(int sense) {
        double own = task(sense).ownStroke().bottom();
        assertThat(task(sense, own).stroke().bottom()).isCloseTo(own, within(ROUNDING));
        // a stop that rounding puts a hair deeper never makes the range deeper
        assertThat(task(sense, own - 5e-10).stroke().bottom()).isGreaterThanOrEqualTo(own);
        PressTask deeper = task(sense, own - 0.001, own - 0.1);
        assertThatThrownBy(deeper::stroke)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.NO_STOP));
    }
}
