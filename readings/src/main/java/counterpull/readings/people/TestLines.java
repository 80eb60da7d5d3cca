package counterpull.readings.people;

import counterpull.engine.body.Action;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.IsometricTest.Meaning;
import counterpull.engine.strength.Tester;
import counterpull.scenario.format.Words;

/** Strength tests as lines of a scenario's {@code tests}. */
public final class TestLines {
    private TestLines() {}

    /**
     * One line, from its dash on.
     *
     * @param ended what ended a test that is only a floor ("pain"); a test that reached the most says nothing of it
     */
    public static String line(Action action, IsometricTest test, Tester with, String ended) {
        return "- {action: " + Words.ACTION.word(action)
                + ", angle: " + Rounded.degrees(test.angle())
                + ", torque: " + Rounded.torque(test.torque())
                + ", with: " + Words.TESTER.word(with)
                + ", spread: " + Rounded.percent(test.relativeSd())
                + (test.meaning() == Meaning.AT_LEAST ? ", ended: " + ended : "")
                + "}";
    }
}
