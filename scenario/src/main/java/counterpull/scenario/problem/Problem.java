package counterpull.scenario.problem;

/**
 * One thing that is wrong with a scenario.
 *
 * @param code what kind of problem
 * @param place where
 * @param found value, unit and limit
 * @param message what is wrong, one sentence without a full stop
 * @param hint what to do about it, one sentence without a full stop; may be empty
 */
public record Problem(Code code, Place place, Found found, String message, String hint) {
    private static final int LONGEST_KEY = 100;

    /** Texts are made fit to be shown, whatever the file held. */
    public Problem {
        found = new Found(
                Shown.shortened(found.value()), Shown.shortened(found.unit()), Shown.shortened(found.limit()));
    }

    /** A problem without a value of its own. */
    public static Problem of(Code code, Place place, String message, String hint) {
        return new Problem(code, place, Found.NOTHING, message, hint);
    }

    /** {@code plover.yaml:12:9  person.limbs.left.thigh: unit missing … [unit-missing]} and the hint, on one line. */
    public String line() {
        StringBuilder line = new StringBuilder(place.file());
        if (place.line() > 0) {
            line.append(':').append(place.line()).append(':').append(place.column());
        }
        line.append("  ");
        String key = Shown.shortened(place.key().toString(), LONGEST_KEY);
        if (!key.isEmpty()) {
            line.append(key).append(": ");
        }
        line.append(message);
        if (!hint.isEmpty()) {
            line.append(". ").append(hint);
        }
        String end = line.charAt(line.length() - 1) == '?' ? " [" : ". [";
        return line.append(end).append(code.text()).append(']').toString();
    }
}
