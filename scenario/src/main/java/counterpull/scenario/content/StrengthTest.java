package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Tester;

/**
 * One strength test held still, corrected for lever and limb weight.
 *
 * @param action what was tested
 * @param with what it was tested with
 * @param ended how the effort ended
 * @param test angle (rad), torque (N·m), relative spread, and the meaning that follows from how it ended
 */
public record StrengthTest(Action action, Tester with, Ended ended, IsometricTest test) {
    public StrengthTest {
        if (test.meaning() != ended.meaning()) {
            throw new IllegalArgumentException("a test that ended with " + ended.words() + " is not " + test.meaning());
        }
    }
}
