package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.load.Friction;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How it ends, case by case. 40 kg of carriage on 45° weighs 277.4 N along the rail, and with 60 kg of plates 693.4 N. */
class SledOutcomeTest {
    private static final double TOUCH = 1e-9;

    private static Outcome held(PressTask task, double place) {
        return LetGo.of(FreeSled.of(task), Release.held(place));
    }

    @Test
    void onItsStopItStays() {
        Outcome outcome = held(Sleds.stopped(45, new Friction(10, 0, 0), Loading.plates(60)), 0);
        assertThat(outcome.ending()).isEqualTo(Ending.ON_THE_STOP);
        assertThat(outcome.first()).contains(Sense.DOWN);
        assertThat(outcome.end()).isEqualTo(new Outcome.End(0, 0, 0, 0));
        assertThat(outcome.energy().error()).isZero();
        assertThat(outcome.pulledUp()).isFalse();
    }

    @Test
    void withoutAStopItPassesThePainFreeDepth() {
        PressTask task = Sleds.plain(45, Friction.none(), Loading.plates(60));
        FreeSled sled = FreeSled.of(task);
        double deepest = task.legs().get(0).plateAt(Math.toRadians(100)) - Sleds.BOTTOM;
        Outcome outcome = LetGo.of(sled, Release.held(0));
        assertThat(deepest).isNegative();
        assertThat(outcome.ending()).isEqualTo(Ending.NOTHING_CATCHES_IT);
        assertThat(outcome.end().place()).isCloseTo(deepest, within(TOUCH));
        assertThat(outcome.arrivalSpeed())
                .isCloseTo(Math.sqrt(-2 * deepest * Constants.STANDARD_GRAVITY * Math.sqrt(0.5)), within(TOUCH));
    }

    @Test
    void strongRubberPullsItUpToStraightLegs() {
        // 0.95 m of path less 0.3 m natural, 800 N/m: 520 N at the bottom against 277 N
        PressTask task = Sleds.stopped(
                45, new Friction(10, 0, 0), new Loading(0, List.of(Sleds.along(Sleds.BOTTOM + 0.95, 800, 0.1, 4))));
        Outcome outcome = held(task, 0);
        assertThat(outcome.ending()).isEqualTo(Ending.AT_THE_TOP);
        assertThat(outcome.first()).contains(Sense.UP);
        assertThat(outcome.pulledUp()).isTrue();
        double straight = task.legs().get(0).plateAt(0) - Sleds.BOTTOM;
        assertThat(outcome.end().place()).isCloseTo(straight, within(TOUCH));
        assertThat(outcome.arrivalSpeed()).isPositive();
        assertThat(outcome.energy().hysteresis()).isPositive();
    }

    @Test
    void restsWhereRubberBalancesItAndFrictionHoldsIt() {
        PressTask task = Sleds.stopped(
                45, new Friction(25, 0, 0), new Loading(0, List.of(Sleds.along(Sleds.BOTTOM + 0.75, 900, 0.1))));
        Outcome outcome = held(task, 0);
        assertThat(outcome.ending()).isEqualTo(Ending.AT_REST);
        assertThat(outcome.pulledUp()).isTrue();
        assertThat(outcome.way().turns()).isPositive();
        assertThat(outcome.end().speed()).isZero();
        FreeSled sled = FreeSled.of(task);
        double at = outcome.end().place();
        assertThat(sled.drive(at, Sense.UP)).isLessThanOrEqualTo(sled.holding(at));
        assertThat(sled.drive(at, Sense.DOWN)).isGreaterThanOrEqualTo(-sled.holding(at));
    }

    @Test
    void whatFirstMovesItHoldsItAndWhatIsMovingGoesOn() {
        // 693.4 N of weight: 700 N hold it at rest, 600 N do not hold it once it moves
        Friction friction = new Friction(600, 0, 700);
        FreeSled sled = FreeSled.of(Sleds.stopped(45, friction, Loading.plates(60)));
        Outcome still = LetGo.of(sled, Release.held(0.1));
        assertThat(still.ending()).isEqualTo(Ending.AT_REST);
        assertThat(still.first()).isEmpty();
        assertThat(still.end().time()).isZero();
        assertThat(LetGo.of(sled, Release.held(0)).ending())
                .as("pressed on its stop, friction or not")
                .isEqualTo(Ending.ON_THE_STOP);
        assertThat(LetGo.of(sled, new Release(0.1, -0.05)).ending()).isEqualTo(Ending.ON_THE_STOP);
        FreeSled weaker = FreeSled.of(Sleds.stopped(45, new Friction(600, 0, 690), Loading.plates(60)));
        assertThat(LetGo.of(weaker, Release.held(0.1)).ending()).isEqualTo(Ending.ON_THE_STOP);
    }

    @Test
    void onItsStopByFrictionAloneIsNotRestingOnIt() {
        // 0.45 m beyond natural length at 640 N/m pulls 288 N against 277 N of weight: friction of 25 N is all that
        // holds
        PressTask task = Sleds.stopped(
                45, new Friction(25, 0, 0), new Loading(0, List.of(Sleds.along(Sleds.BOTTOM + 0.75, 640, 0))));
        Outcome outcome = held(task, 0);
        assertThat(outcome.ending()).isEqualTo(Ending.AT_REST);
        assertThat(outcome.first()).isEmpty();
    }

    @Test
    void endsAtTheTestedLengthOfItsRubber() {
        // anchored below: 0.5 m of path at the bottom, tested to 0.66 m; without weight along the rail, pushed upward
        PressTask task =
                Sleds.stopped(0, Friction.none(), new Loading(0, List.of(Sleds.along(Sleds.BOTTOM - 0.5, 5, 0, 2.2))));
        Outcome outcome = LetGo.of(FreeSled.of(task), new Release(0.1, 0.5));
        assertThat(outcome.ending()).isEqualTo(Ending.RUBBER_AT_TESTED_LENGTH);
        assertThat(outcome.end().place()).isCloseTo(0.16, within(TOUCH));
        assertThat(outcome.energy().error()).isLessThan(TOUCH);
    }

    @Test
    void aReleaseOutsideItsEndsIsRefused() {
        FreeSled sled = FreeSled.of(Sleds.stopped(45, Friction.none(), Loading.plates(60)));
        assertThatThrownBy(() -> LetGo.of(sled, Release.held(-0.01))).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
            assertThat(refusal.value()).isEqualTo(-0.01);
            assertThat(refusal.limit()).isZero();
        });
        assertThatThrownBy(() -> new Release(0, Double.NaN)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Ends(1, Ends.Bottom.STOP, 1)).isInstanceOf(Refusal.class);
    }
}
