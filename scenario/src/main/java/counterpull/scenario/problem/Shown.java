package counterpull.scenario.problem;

/** Makes any text from a file fit to be shown on one line: short, and without control characters. */
public final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** At most 60 characters on one line. */
    public static String shortened(String text) {
        return shortened(text, LONGEST);
    }

    /** At most that many characters on one line, an ellipsis in place of the rest. */
    public static String shortened(String text, int longest) {
        String head = text.length() > longest ? text.substring(0, longest - 1) + "…" : text;
        StringBuilder shown = new StringBuilder(head.length());
        head.codePoints().forEach(point -> shown.appendCodePoint(isPlain(point) ? point : '·'));
        return shown.toString();
    }

    private static boolean isPlain(int point) {
        int type = Character.getType(point);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }
}
