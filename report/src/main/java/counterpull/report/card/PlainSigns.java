package counterpull.report.card;

/** Words for the signs that a PDF's built-in fonts lack. */
final class PlainSigns {
    private static final String[][] SIGNS = {
        {"→", "to"},
        {"≤", "at most "},
        {"≥", "at least "},
        {"−", "-"},
        {"≈", "about "},
        {"√", "root "},
        {"∞", "no limit"},
        {"α", "alpha"},
        {"τ", "torque"},
        {"Σ", "sum"},
        {"Δ", "change of "},
        {"θ", "theta"},
        {"λ", "lambda"},
        {"μ", "mu"},
        {"\u2009", "\u00A0"},
        {"\u202F", "\u00A0"}
    };

    private PlainSigns() {}

    static String of(String text) {
        String plain = text;
        for (String[] sign : SIGNS) {
            plain = plain.replace(sign[0], sign[1]);
        }
        return plain;
    }
}
