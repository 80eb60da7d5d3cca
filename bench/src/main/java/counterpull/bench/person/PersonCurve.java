package counterpull.bench.person;

import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Prior;
import java.util.ArrayList;
import java.util.List;

/** A limb's curve of one action from all of its tests: none leaves the published average with its wide band, one scales it, several bend it. */
public final class PersonCurve {
    private PersonCurve() {}

    /**
     * The curve.
     *
     * @param published average for this person
     * @param tests of one action of one limb on one day, floors among them, in any order
     * @param others what else is known as tests, from repetitions
     */
    public static BentCurve of(Prior published, List<StrengthResult> tests, List<IsometricTest> others) {
        List<IsometricTest> all = new ArrayList<>(others);
        int reached = StrengthResult.reached(tests);
        tests.forEach(test -> all.addAll(test.tests(reached)));
        return BentCurve.of(published, all);
    }
}
