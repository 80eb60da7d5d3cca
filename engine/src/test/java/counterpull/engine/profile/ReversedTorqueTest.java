package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Near straight the knee is asked for flexion: the action is named so and its own strength counts. */
class ReversedTorqueTest {
    private static final int TOP = 20;
    // the same quotient computed twice: nothing but rounding may differ
    private static final double ROUNDING = 1e-12;

    @Test
    void atTheTopTheKneeIsAskedForFlexion() {
        PressProfile profile = PressProfile.of(Trials.task(Trials.strong(500, 180, 500)));
        PressLimb left = profile.limbs().get(0);
        // worked example B: −10.5376 N·m at 10°, held
        assertThat(left.torque(Joint.KNEE, Phase.HELD, TOP)).isCloseTo(-10.5376, within(5.1e-5));
        assertThat(left.had(Joint.KNEE, Phase.HELD, TOP)).isEqualTo(90);
        assertThat(left.effort(Joint.KNEE, Phase.HELD, TOP))
                .isCloseTo(-left.torque(Joint.KNEE, Phase.HELD, TOP) / 90, within(ROUNDING));
        Limiting limiting =
                profile.limiting(List.of(Joint.KNEE), Phase.HELD, TOP).orElseThrow();
        assertThat(limiting.action()).isEqualTo(Action.KNEE_FLEXION);
    }

    @Test
    void atTheBottomForExtension() {
        PressProfile profile = PressProfile.of(Trials.task());
        Limiting limiting = profile.limiting(List.of(Joint.KNEE), Phase.HELD, 0).orElseThrow();
        assertThat(limiting.action()).isEqualTo(Action.KNEE_EXTENSION);
        assertThat(limiting.side()).isEqualTo(Side.LEFT);
        // worked example B: 84.6071 N·m against 180
        assertThat(limiting.effort()).isCloseTo(84.6071 / 180, within(5.1e-5 / 180));
    }

    @Test
    void anAbsentOppositeActionCountsZeroAndIsSaidToBeAbsent() {
        PressProfile profile = PressProfile.of(Trials.task(Trials.named(500, 180, 500)));
        assertThat(profile.limbs().get(0).effort(Joint.KNEE, Phase.HELD, TOP)).isZero();
        assertThat(profile.ground().capacity().absent(0, Action.KNEE_FLEXION)).isTrue();
        assertThat(profile.ground().capacity().absent(0, Action.KNEE_EXTENSION)).isFalse();
    }

    @Test
    void aJointOfWhichNothingIsKnownIsNotKnownInEitherSense() {
        PressProfile profile = PressProfile.of(Trials.task(LimbStrength.none()));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i <= TOP; i++) {
                assertThat(profile.limiting(Joint.LEG, phase, i)).isEmpty();
                assertThat(profile.effort(Joint.KNEE, phase, i)).isNaN();
            }
        }
    }

    @Test
    void aCurveThatDoesNotReachTheAngleIsNotKnownThere() {
        LimbStrength strength = Trials.named(500, 180, 500).with(Action.KNEE_EXTENSION, Trials.between(180, 40, 70));
        PressProfile profile = PressProfile.of(Trials.task(strength));
        assertThat(profile.effort(Joint.KNEE, Phase.HELD, 0)).isNaN();
        // position 10 of 21 is halfway from 90° to 10°: 50°, inside the curve's 40° to 70°
        assertThat(profile.effort(Joint.KNEE, Phase.HELD, 10)).isPositive();
    }
}
