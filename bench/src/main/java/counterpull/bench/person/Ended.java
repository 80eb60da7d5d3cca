package counterpull.bench.person;

/** What ended an effort against a scale. Only the first says what the person has; the others say what they have at least. */
public enum Ended {
    /** The person pushed as hard as they could, held it, and the scale showed it. */
    REACHED("reached"),
    /** It hurt: the person stopped, or held back. */
    PAIN("ended by pain"),
    /** The pad or strap slipped before the most was reached. */
    SLIP("ended by a slip"),
    /** The person moved the tester, who could not hold against them. */
    OVERPOWERED("overpowered the tester");

    private final String words;

    Ended(String words) {
        this.words = words;
    }

    /** How a table says it. */
    public String words() {
        return words;
    }

    /** Whether the reading is the person's most, and not only something they can do at least. */
    public boolean reached() {
        return this == REACHED;
    }
}
