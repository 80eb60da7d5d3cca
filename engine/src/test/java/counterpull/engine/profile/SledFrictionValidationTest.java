package counterpull.engine.profile;

import counterpull.engine.Constants;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Phase;
import counterpull.engine.regression.Examples;
import counterpull.engine.validation.Published;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 100 kg on a rail of 45° with friction in proportion to its weight, where the stroke starts and nothing accelerates. */
class SledFrictionValidationTest {
    private static final String SOURCE =
            "closed form m g (sin 45° ± μ cos 45°) with g = 9.81, computed by hand; not" + " published";
    private static final double TO_THEIR_GRAVITY = 9.81 / Constants.STANDARD_GRAVITY;

    @ParameterizedTest
    @CsvSource({"0, 693.67, 693.67", "0.02, 707.55, 679.80", "0.05, 728.36, 658.99", "0.10, 763.04, 624.30"})
    void pushesUpAndHoldsBackOnTheWayDown(double coefficient, double up, double down) {
        PressProfile profile = PressProfile.of(Examples.rail(new Friction(0, coefficient, 0), Loading.plates(60), 5));
        double lifting = profile.force(Phase.LIFTING, 0) * TO_THEIR_GRAVITY;
        double lowering = profile.force(Phase.LOWERING, 0) * TO_THEIR_GRAVITY;
        check("push, friction coefficient " + coefficient, up, lifting);
        check("hold back, friction coefficient " + coefficient, down, lowering);
        check("mean of both, friction coefficient " + coefficient, 693.67, (lifting + lowering) / 2);
        check("held, friction coefficient " + coefficient, 693.67, profile.force(Phase.HELD, 0) * TO_THEIR_GRAVITY);
    }

    /** The way back, as one does with a scale: friction is half the difference of the two pulls, the weight's part their mean. */
    @ParameterizedTest
    @CsvSource({"0.02, 707.55, 679.80", "0.05, 728.36, 658.99", "0.10, 763.04, 624.30"})
    void frictionIsRecoveredFromAMeasuredPair(double coefficient, double up, double down) {
        double weightPart = (up + down) / 2;
        double found = (up - down) / 2 / (weightPart / Math.tan(Math.toRadians(45)));
        PressProfile profile = PressProfile.of(Examples.rail(new Friction(0, found, 0), Loading.plates(60), 5));
        double lifting = profile.force(Phase.LIFTING, 0) * TO_THEIR_GRAVITY;
        double lowering = profile.force(Phase.LOWERING, 0) * TO_THEIR_GRAVITY;
        check("friction recovered from " + up + " and " + down + " N", (up - down) / 2, (lifting - lowering) / 2);
        check("weight's part recovered from " + up + " and " + down + " N", weightPart, (lifting + lowering) / 2);
        Published.of("friction coefficient recovered from " + up + " and " + down + " N", "")
                .source(SOURCE)
                .value(coefficient)
                .ours(found)
                .within(1e-5, "pulls of some 700 N printed to two decimals");
    }

    private static void check(String quantity, double value, double ours) {
        Published.of(quantity, "N").source(SOURCE).value(value).ours(ours).within(0.0051, "printed to two decimals");
    }
}
