package counterpull.report;

import counterpull.report.table.Decimals;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;

/**
 * Numbers that somebody will set: written so that typing them back gives the same number to the last digit. Where the
 * reader's own unit would need a tail of decimals, the number stands as it was measured, with the reader's beside it.
 */
public final class Exact {
    private static final int SHORT = 7;

    private Exact() {}

    /** A quantity in the reader's unit where that is short, else in the other system's with the reader's rounded. */
    public static String words(double si, Dimension dimension, Units units) {
        Quantity own = Quantity.exactly(si, units.unit(dimension));
        Quantity other = Quantity.exactly(si, units.other().unit(dimension));
        boolean keep = number(own).length() <= SHORT
                || number(own).length() <= number(other).length();
        return keep ? words(own) : words(other) + " (about " + units.written(si, dimension) + ")";
    }

    /**
     * A tape reading: as it was given where it is a mark of the machine; where it was computed (turned from a hip-to-plate
     * distance and back) the last-digit noise, below a nanometre, is taken off.
     */
    public static String mark(double si, Units units) {
        return words(Math.rint(si * 1e9) / 1e9, Dimension.LENGTH, units);
    }

    private static String number(Quantity quantity) {
        return Decimals.exact(quantity.value());
    }

    private static String words(Quantity quantity) {
        Unit unit = quantity.unit();
        boolean close = unit.label().isEmpty() || unit.label().equals("°");
        return number(quantity) + (close ? "" : "\u00A0") + unit.label();
    }
}
