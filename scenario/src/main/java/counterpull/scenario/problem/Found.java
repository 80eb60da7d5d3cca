package counterpull.scenario.problem;

/**
 * What was found and what was allowed, each empty where it does not apply.
 *
 * @param value the refused value as it was written
 * @param unit its unit, or the unit that was due
 * @param limit the limit it passes, with its unit
 */
public record Found(String value, String unit, String limit) {
    /** Nothing to show. */
    public static final Found NOTHING = new Found("", "", "");

    /** Only a value. */
    public static Found value(String value) {
        return new Found(value, "", "");
    }
}
