package counterpull.scenario.content;

import counterpull.engine.strength.IsometricTest.Meaning;

/** How the effort of a strength test ended, and so what its torque means. */
public enum Ended {
    /** The person gave all they had. */
    REACHED("reached", Meaning.REACHED),
    /** It hurt before that. */
    PAIN("pain", Meaning.AT_LEAST),
    /** The strap, the pad or the person's hold slipped. */
    SLIP("slip", Meaning.AT_LEAST),
    /** The tester could not hold against the person. */
    OVERPOWERED("overpowered", Meaning.AT_LEAST),
    /** Another joint gave out first, in a set of repetitions. */
    ANOTHER_JOINT("another joint", Meaning.AT_LEAST);

    private final String words;
    private final Meaning meaning;

    Ended(String words, Meaning meaning) {
        this.words = words;
        this.meaning = meaning;
    }

    /** The word for it in a file. */
    public String words() {
        return words;
    }

    /** What the torque says of the person's greatest. */
    public Meaning meaning() {
        return meaning;
    }
}
