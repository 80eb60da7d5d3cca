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

    /**
     * A number to be set.
     *
     * @param exact what to type
     * @param about the same in the reader's own unit, rounded; empty where {@code exact} is in it
     */
    public record Said(String exact, String about) {
        @Override
        public String toString() {
            return about.isEmpty() ? exact : exact + " (" + about + ")";
        }
    }

    /** A quantity in the reader's unit where that is short, else in the other system's with the reader's rounded. */
    public static String words(double si, Dimension dimension, Units units) {
        return said(si, dimension, units).toString();
    }

    /** {@link #words} in its two parts. */
    public static Said said(double si, Dimension dimension, Units units) {
        Unit ownUnit = units.unit(dimension);
        Unit otherUnit = units.other().unit(dimension);
        Quantity own = Quantity.exactly(si, ownUnit);
        Quantity other = Quantity.exactly(si, otherUnit);
        boolean ownWillDo = own.unit() == ownUnit && number(own).length() <= SHORT;
        boolean otherIsShorter = other.unit() == otherUnit
                && number(other).length() < number(own).length();
        boolean otherAlone = other.unit() == otherUnit && own.unit() != ownUnit;
        boolean keep = ownWillDo || !(otherIsShorter || otherAlone);
        return keep ? new Said(words(own), "") : new Said(words(other), "about " + units.written(si, dimension));
    }

    /**
     * A tape reading: as it was given where it is a mark of the machine; where it was computed (turned from a hip-to-plate
     * distance and back) the last-digit noise, below a nanometre, is taken off.
     */
    public static String mark(double si, Units units) {
        return saidMark(si, units).toString();
    }

    /** {@link #mark} in its two parts. */
    public static Said saidMark(double si, Units units) {
        return said(Math.rint(si * 1e9) / 1e9, Dimension.LENGTH, units);
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
