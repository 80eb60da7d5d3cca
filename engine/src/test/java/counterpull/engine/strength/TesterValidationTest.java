package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

class TesterValidationTest {
    private static void seed(String name, double limits, double ours) {
        Published.of("95 % limits of agreement, " + name, "%")
                .section("Strength tests, error of one reading")
                .source("Chamorro 2017, Open Med 12:359, 17 studies; looked up")
                .value(limits)
                .ours(100 * ours * 1.96 * Math.sqrt(2))
                .within(0.14, "limits are 1.96 √2 times the error of one reading, seeded to a tenth of a percent");
    }

    @Test
    void seedsFollowFromThePublishedLimits() {
        seed("hand-held, knee extension", 33.6, Tester.HAND_HELD.relativeSd(Action.KNEE_EXTENSION));
        seed("hand-held, ankle plantarflexion", 48.9, Tester.HAND_HELD.relativeSd(Action.ANKLE_PLANTARFLEXION));
        seed("isokinetic dynamometer, actions of the leg", 15, Tester.ISOKINETIC.relativeSd(Action.KNEE_FLEXION));
    }

    @Test
    void aBeltIsSurerThanAHandAndAMachineThanABelt() {
        for (Action action : Action.values()) {
            assertThat(Tester.HAND_HELD.relativeSd(action)).isGreaterThan(Tester.BELT_FIXED.relativeSd(action));
            assertThat(Tester.BELT_FIXED.relativeSd(action)).isGreaterThan(Tester.ISOKINETIC.relativeSd(action));
        }
    }
}
