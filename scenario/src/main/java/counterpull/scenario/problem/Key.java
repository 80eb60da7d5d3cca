package counterpull.scenario.problem;

/**
 * The way to a value through maps and lists, linked from the value upward so that many values share one way; its text is
 * {@code person.limbs.left.thigh} or {@code kit.rubber[2].tag}, counted from 1 as people count.
 *
 * @param parent the way to what holds the value; null at the top
 * @param step a key with its dot, or a number in brackets
 */
public record Key(Key parent, String step) {
    /** The whole file. */
    public static final Key TOP = new Key(null, "");

    private static final int LONGEST_STEP = 40;

    /** The way to a value of a map. */
    public Key key(String name) {
        return new Key(this, (this == TOP ? "" : ".") + Shown.shortened(name, LONGEST_STEP));
    }

    /** The way to an item of a list, counted from 1. */
    public Key item(int number) {
        return new Key(this, "[" + number + "]");
    }

    @Override
    public String toString() {
        return parent == null ? step : parent + step;
    }
}
