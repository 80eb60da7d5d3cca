package counterpull.readings.table;

/**
 * An apostrophe in front of words that a spreadsheet would run as a formula, or that a table would take for a comment. What begins with an
 * apostrophe itself gets one more, so that taking one off gives the words back.
 */
final class Guard {
    private static final String GUARDED = "=+-@#\t\r'";

    private Guard() {}

    static String on(String words) {
        return isGuarded(words, 0) ? "'" + words : words;
    }

    static String off(String cell) {
        return cell.startsWith("'") && isGuarded(cell, 1) ? cell.substring(1) : cell;
    }

    private static boolean isGuarded(String words, int at) {
        return words.length() > at && GUARDED.indexOf(words.charAt(at)) >= 0;
    }
}
