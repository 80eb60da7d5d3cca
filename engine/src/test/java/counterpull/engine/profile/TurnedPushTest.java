package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import org.junit.jupiter.api.Test;

/** A push that misses what is meant by an angle. */
class TurnedPushTest {
    private static final double MISSED = Angles.radians(4);

    private static PressProfile pushed(Push push) {
        return PressProfile.of(Trials.with(Trials.task(), new Pushing(push, Pushing.USUAL_SPREAD)));
    }

    private static void missesBy(Push meant) {
        PressProfile told = pushed(meant);
        PressProfile missed = pushed(meant.turned(MISSED));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < told.positions(); i++) {
                double angle = told.limbs().get(0).pushAngle(phase, i);
                assertThat(missed.limbs().get(0).pushAngle(phase, i))
                        .as(meant.words())
                        .isCloseTo(angle + MISSED, within(1e-12));
            }
        }
    }

    @Test
    void everyWayOfPushingCanBeMissed() {
        missesBy(new Push.Angled(Angles.radians(-3)));
        missesBy(new Push.Through(Push.BodyPoint.HIP));
        missesBy(new Push.LeastEffort(Angles.radians(-15), Angles.radians(15)));
    }

    @Test
    void aMissedPushFollowsTheForceIfTheMeantOneDoes() {
        assertThat(new Push.LeastEffort(0, 0.1).turned(0.1).followsForce()).isTrue();
        assertThat(new Push.Through(Push.BodyPoint.HIP).turned(0.1).followsForce())
                .isFalse();
        assertThat(new Push.Angled(0.1).turned(0.2)).isEqualTo(new Push.Angled(0.1 + 0.2));
    }
}
