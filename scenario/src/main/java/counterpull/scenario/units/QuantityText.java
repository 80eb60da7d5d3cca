package counterpull.scenario.units;

import counterpull.scenario.units.Reading.Read;
import counterpull.scenario.units.Reading.Reason;
import counterpull.scenario.units.Reading.Refused;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads {@code 45 deg}, {@code 132 lb}, {@code 96 N·m}, {@code 5 ft 9 in}. A number without a unit is refused except for
 * a fraction, which is a pure number or a percentage. A comma inside a number is refused: it means thousands to one
 * reader and decimals to another.
 */
public final class QuantityText {
    /** A longer text is no quantity; the limit keeps the patterns' work small. */
    private static final int LONGEST = 60;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+(?:[.,' ]?\\d+)*,\\d.*");
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?\\.?(?:nan|inf|infinity)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern NEXT_PART = Pattern.compile("\\s+(?=[+-]?\\.?\\d)");

    private QuantityText() {}

    /** Reads a text as a quantity of the wanted dimension. */
    public static Reading read(String text, Dimension wanted) {
        String plain = plain(text);
        if (plain.length() > LONGEST) {
            return new Refused(Reason.NOT_A_NUMBER, plain);
        }
        if (NOT_FINITE.matcher(plain).matches()) {
            return new Refused(Reason.NOT_FINITE, plain);
        }
        if (COMMA.matcher(plain).matches()) {
            return new Refused(Reason.DECIMAL_COMMA, plain);
        }
        return parts(plain, wanted);
    }

    /** Ordinary spaces for thin and non-breaking ones, a hyphen for the typographic minus. */
    private static String plain(String text) {
        return text.replace('\u2212', '-')
                .replace('\u00A0', ' ')
                .replace('\u2009', ' ')
                .replace('\u202F', ' ')
                .strip();
    }

    private static Reading parts(String plain, Dimension wanted) {
        Matcher number = NUMBER.matcher(plain);
        if (!number.lookingAt()) {
            return new Refused(Reason.NOT_A_NUMBER, plain);
        }
        String rest = plain.substring(number.end()).strip();
        String[] cut = NEXT_PART.split(rest, 2);
        Reading first = part(number.group(), cut[0], wanted);
        return cut.length == 1 || first instanceof Refused ? first : joined(((Read) first).quantity(), cut[1], wanted);
    }

    private static Reading part(String number, String unitText, Dimension wanted) {
        double value = Double.parseDouble(number);
        if (Double.isInfinite(value)) {
            return new Refused(Reason.NOT_FINITE, number);
        }
        if (unitText.isEmpty() && wanted != Dimension.RATIO) {
            return new Refused(Reason.UNIT_MISSING, number);
        }
        Optional<Unit> unit = Unit.spelled(unitText);
        if (unit.isEmpty()) {
            return new Refused(Reason.UNKNOWN_UNIT, unitText);
        }
        return unit.get().dimension() == wanted
                ? finite(new Quantity(value, unit.get()))
                : new Refused(Reason.WRONG_UNIT, unitText);
    }

    private static Reading finite(Quantity quantity) {
        return Double.isInfinite(quantity.si())
                ? new Refused(Reason.NOT_FINITE, quantity.toString())
                : new Read(quantity);
    }

    /** {@code 5 ft 9 in}: whole larger units, then a smaller amount of a smaller unit, both above zero. */
    private static Reading joined(Quantity larger, String rest, Dimension wanted) {
        Reading second = parts(rest, wanted);
        if (!(second instanceof Read read)) {
            return second;
        }
        Quantity smaller = read.quantity();
        Unit unit = smaller.unit();
        boolean inOrder = larger.value() >= 0
                && larger.value() == Math.rint(larger.value())
                && smaller.value() >= 0
                && smaller.si() < larger.unit().toSi(1)
                && wanted != Dimension.RATIO;
        return inOrder
                ? new Read(new Quantity(whole(unit.fromSi(larger.si())) + smaller.value(), unit))
                : new Refused(Reason.NOT_A_NUMBER, rest);
    }

    /** Takes off the last-digit noise of a conversion that is a whole number: 60 in for 5 ft. */
    private static double whole(double value) {
        double nearest = Math.rint(value);
        return Math.abs(value - nearest) < 1e-9 ? nearest : value;
    }
}
