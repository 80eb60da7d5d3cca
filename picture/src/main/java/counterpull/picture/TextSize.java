package counterpull.picture;

/**
 * Estimated width of a word, px: character widths of DejaVu Sans (read off the font, in thousandths of the size), which is
 * wider than the system fonts that a page is likely to use, so that boxes come out on the safe side.
 */
final class TextSize {
    private static final int USUAL = 640;
    private static final double BOLD = 1.11;

    private TextSize() {}

    static double width(String text, Lettering lettering) {
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += thousandths(text.charAt(i));
        }
        double plain = sum * lettering.size() / 1000;
        return lettering.weight() == Lettering.Weight.BOLD ? plain * BOLD : plain;
    }

    private static int thousandths(char c) {
        if ("iljI|'.,:;·".indexOf(c) >= 0) {
            return 320;
        }
        if ("ft r()-".indexOf(c) >= 0) {
            return 400;
        }
        if ("mwMW%→←−×±+=".indexOf(c) >= 0) {
            return c == '%' || c == 'm' || c == 'W' ? 980 : 850;
        }
        if (c == '\u2009') {
            return 200;
        }
        return c >= 'A' && c <= 'Z' ? 720 : USUAL;
    }
}
