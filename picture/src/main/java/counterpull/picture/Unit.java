package counterpull.picture;

import counterpull.engine.Require;

/**
 * A unit that people read.
 *
 * @param symbol as written after a number ("cm", "°", "N·m")
 * @param size one of it in SI, above zero
 * @param decimals how many decimals a single value of it is shown with, 0 to 4
 */
public record Unit(String symbol, double size, int decimals) {
    private static final char THIN_SPACE = '\u2009';

    public Unit {
        Require.positive(size, "size of the unit " + symbol, "");
        Require.within(decimals, new Require.Limits(0, 4), "decimals of the unit " + symbol, "");
    }

    /** A value in SI, in this unit. */
    public double of(double si) {
        return si / size;
    }

    /** A value in SI as number and unit, a thin space between them (none before a degree sign). */
    public String say(double si) {
        String number = number(si);
        if (Double.isNaN(si)) {
            return number;
        }
        return symbol.equals("°") ? number + symbol : number + THIN_SPACE + symbol;
    }

    /** A value in SI as number and unit with two decimals at most and none that says nothing: for what is stamped on it. */
    public String brief(double si) {
        return Double.isNaN(si) ? number(si) : Numbers.trimmed(of(si)) + THIN_SPACE + symbol;
    }

    /** A value in SI as a number of this unit. */
    public String number(double si) {
        return Numbers.fixed(of(si), decimals);
    }
}
