package counterpull.engine.regression;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** What everybody on the floor knows and the numbers must say too: common practice, no source. */
class FactsOfTheTradeValidationTest {
    private static final String SOURCE = "common practice, no source";
    private static final double WEIGHT = 100 * 9.80665;
    private static final PressProfile SMOOTH = PressProfile.of(Examples.rail(Friction.none(), Loading.plates(60), 101));

    private static Published fact(String quantity) {
        return Published.of(quantity, "").section("Facts of the trade").source(SOURCE);
    }

    @Test
    void onARailAt45DegreesSeventyOnePercentOfTheWeightPushesBack() {
        for (int i : new int[] {0, 100}) {
            fact("held push over weight on a frictionless 45° rail, " + (i == 0 ? "bottom" : "top"))
                    .value(0.71)
                    .ours(SMOOTH.force(Phase.HELD, i) / WEIGHT)
                    .within(0.005, "said with two digits");
        }
    }

    @Test
    void allOfTheMassMustBeStarted() {
        int i = 10;
        double acceleration = SMOOTH.ground().motion().acceleration(Phase.LIFTING, i);
        fact("inertial force over mass × acceleration, 40 kg carriage + 60 kg plates")
                .value(1)
                .ours(SMOOTH.force(Part.INERTIA, Phase.LIFTING, i) / (100 * acceleration))
                .within(1e-12, "an identity; rounding");
    }

    @Test
    void theKneesTaskShrinksTowardStraightWhileTheLoadStays() {
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 101; i += 10) {
            double torque = SMOOTH.limbs().get(0).torque(Joint.KNEE, Phase.HELD, i);
            assertThat(torque).isLessThan(before);
            before = torque;
        }
    }
}
