package counterpull.scenario.units;

/**
 * A quantity written for a person, number and unit apart so that a page can set the one large and the other small.
 *
 * @param number the digits
 * @param label the unit for the eye; empty for a pure number
 */
public record Written(String number, String label) {
    private static final char THIN_SPACE = '\u2009';

    /** Number and unit with a thin space between them; none before the degree sign. */
    @Override
    public String toString() {
        boolean close = label.isEmpty() || label.equals("°");
        return close ? number + label : number + THIN_SPACE + label;
    }
}
