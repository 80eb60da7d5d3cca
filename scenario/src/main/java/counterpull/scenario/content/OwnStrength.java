package counterpull.scenario.content;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Prior;
import java.util.List;

/**
 * What was found out about one limb's strength.
 *
 * @param tests strength tests, which bend the published curve
 * @param curves own curves, which replace it
 * @param notKnown actions for which no published curve shall stand in
 */
public record OwnStrength(List<StrengthTest> tests, List<OwnCurve> curves, List<Action> notKnown) {
    public OwnStrength {
        tests = List.copyOf(tests);
        curves = List.copyOf(curves);
        notKnown = List.copyOf(notKnown);
    }

    /** Nothing: the published curves stand alone. */
    public static OwnStrength none() {
        return new OwnStrength(List.of(), List.of(), List.of());
    }

    LimbStrength curves(PublishedStrength published, Side side) {
        LimbStrength strength = published.curves();
        for (Action action : notKnown) {
            strength = strength.without(action);
        }
        for (OwnCurve curve : curves) {
            strength = strength.with(curve.action(), curve.curve(published.speedLaw(curve.action())));
        }
        for (Action action : Action.values()) {
            List<IsometricTest> own = testsOf(action);
            strength = own.isEmpty() ? strength : strength.with(action, bent(published, own, action, side));
        }
        return strength;
    }

    private List<IsometricTest> testsOf(Action action) {
        return tests.stream()
                .filter(test -> test.action() == action)
                .map(StrengthTest::test)
                .toList();
    }

    private static BentCurve bent(PublishedStrength published, List<IsometricTest> tests, Action action, Side side) {
        Prior curve = published.of(action).orElseThrow(() -> noCurve(action, side));
        return BentCurve.of(curve, tests);
    }

    private static Refusal noCurve(Action action, Side side) {
        String quantity = action.words() + " test, " + side.words() + " limb";
        return new Refusal(
                Fault.OUTSIDE_PUBLISHED_RANGE,
                quantity,
                Double.NaN,
                Double.NaN,
                "",
                "no published curve of " + action.words()
                        + " holds for this person, so a test has nothing to bend: give " + "the person's own curve");
    }
}
