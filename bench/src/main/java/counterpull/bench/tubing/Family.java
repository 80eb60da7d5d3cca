package counterpull.bench.tubing;

/** The kinds of law that are tried, in order of how many numbers each has. */
public enum Family {
    LINEAR("linear", "in proportion to the stretch beyond natural length"),
    MOONEY_RIVLIN("Mooney–Rivlin", "the two-constant law of rubber"),
    OGDEN_1("Ogden, 1 term", "a power law of stretch"),
    OGDEN_2("Ogden, 2 terms", "the sum of two power laws of stretch"),
    OGDEN_3("Ogden, 3 terms", "the sum of three power laws of stretch"),
    SMOOTH("smooth curve", "a smooth rising curve through the readings, without a formula");

    private final String words;
    private final String meaning;

    Family(String words, String meaning) {
        this.words = words;
        this.meaning = meaning;
    }

    /** What it is called. */
    public String words() {
        return words;
    }

    /** What that means, for a person who does not know the name. */
    public String meaning() {
        return meaning;
    }
}
