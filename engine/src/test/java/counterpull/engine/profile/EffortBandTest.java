package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Require;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.Physique;
import counterpull.engine.strength.PublishedCurve;
import counterpull.engine.strength.StrengthCurve;
import org.junit.jupiter.api.Test;

/** How sure an effort is: the band of the strength that is asked for, of whichever action that is. */
class EffortBandTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void theEndsAreTheTorqueOverTheEndsOfTheStrengthsBand() {
        PressProfile profile = PressProfile.of(Trials.task());
        PressLimb limb = profile.limbs().get(0);
        for (int i = 0; i < profile.positions(); i++) {
            double torque = limb.torque(Joint.KNEE, Phase.HELD, i);
            Action action = torque >= 0 ? Action.KNEE_EXTENSION : Action.KNEE_FLEXION;
            StrengthCurve curve = limb.limb().strength().of(action).orElseThrow();
            double angle = limb.angle(Joint.KNEE, i);
            if (curve.known(angle, 0)) {
                Require.Limits band = limb.effortBand(Joint.KNEE, Phase.HELD, i);
                assertThat(band.low()).isCloseTo(Math.abs(torque) / curve.upper90(angle), within(ROUNDING));
                assertThat(band.high()).isCloseTo(Math.abs(torque) / curve.lower90(angle), within(ROUNDING));
            }
        }
    }

    @Test
    void anAverageOfOlderPeopleSaysThatItIsHopeful() {
        assertThat(source(66)).contains("hopeful at this age");
        assertThat(source(40)).doesNotContain("hopeful");
    }

    private static String source(double age) {
        return PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.FEMALE, age, 64, 1.65))
                .source();
    }
}
