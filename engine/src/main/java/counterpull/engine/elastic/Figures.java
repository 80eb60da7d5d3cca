package counterpull.engine.elastic;

/** Numbers in the lines that explain a law: six significant digits, without the machinery of a formatter. */
final class Figures {
    private static final int SIGNIFICANT_DIGITS = 6;

    private Figures() {}

    /** The value to six significant digits, without a trailing ".0". */
    static String of(double value) {
        String text = Double.toString(rounded(value));
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private static double rounded(double value) {
        if (value == 0 || !(Math.abs(value) <= Double.MAX_VALUE)) {
            return value;
        }
        int places = SIGNIFICANT_DIGITS - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
        if (places < 0) {
            double unit = Math.pow(10, -places);
            return Math.rint(value / unit) * unit;
        }
        double scale = Math.pow(10, places);
        return Math.rint(value * scale) / scale;
    }
}
