package counterpull.report;

import counterpull.engine.Require;

/**
 * Equal plates on one horn, or the same on both.
 *
 * @param horn where
 * @param plate what is written on them
 * @param mass of one, kg
 * @param count how many on that horn, or on each side
 */
public record PlateStack(Horn horn, String plate, double mass, int count) {
    private static final int LONGEST_UNBROKEN = 12;

    public PlateStack {
        Require.positive(mass, "mass of plate " + plate, "kg");
        Require.within(count, new Require.Limits(1, 200), "count of plate " + plate, "");
    }

    /** Where plates go. */
    public enum Horn {
        EACH_SIDE("each side", 2),
        LEFT("on the left", 1),
        RIGHT("on the right", 1),
        MIDDLE("in the middle", 1),
        /** Chosen on a weight stack instead of put on. */
        STACK("on the stack", 1);

        private final String words;
        private final int times;

        Horn(String words, int times) {
            this.words = words;
            this.times = times;
        }

        /** The horn as a person says it. */
        public String words() {
            return words;
        }
    }

    /** How many plates these are in all. */
    public int pieces() {
        return horn.times * count;
    }

    /** Mass of all of them, kg. */
    public double total() {
        return pieces() * mass;
    }

    /** Count and name; the name alone for a single plate. */
    public String words() {
        return count == 1 ? plate : count + " × " + plate;
    }

    /** The name, a short one held together where a line ends. */
    public String unbroken() {
        return unbroken(plate);
    }

    /** {@link #words}, held together where a line ends if short. */
    public String wordsUnbroken() {
        return unbroken(words());
    }

    private static String unbroken(String words) {
        return words.length() <= LONGEST_UNBROKEN ? words.replace(' ', '\u00A0') : words;
    }

    /** The same with another count. */
    public PlateStack of(int other) {
        return new PlateStack(horn, plate, mass, other);
    }
}
