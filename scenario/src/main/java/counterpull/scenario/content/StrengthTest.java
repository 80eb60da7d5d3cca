package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Tester;

/**
 * One strength test held still, corrected for lever and limb weight.
 *
 * @param action what was tested
 * @param with what it was tested with
 * @param test angle (rad), torque (N·m) and relative spread
 */
public record StrengthTest(Action action, Tester with, IsometricTest test) {}
