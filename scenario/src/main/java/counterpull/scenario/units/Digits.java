package counterpull.scenario.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Decimal text of numbers, the same in every locale. */
final class Digits {
    private Digits() {}

    /** The shortest plain decimal that reads back as the same double; no exponent, no needless zeros. */
    static String exact(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** Rounded to that many significant digits, half away from zero. */
    static double rounded(double value, int digits) {
        return new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_UP))
                .doubleValue();
    }

    /** With exactly that many decimals, half away from zero; never a minus before zero. */
    static String fixed(double value, int decimals) {
        BigDecimal scaled = new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP);
        return scaled.signum() == 0 ? scaled.abs().toPlainString() : scaled.toPlainString();
    }

    /** How many decimals show that many significant digits; none where the whole part already has them. */
    static int decimalsFor(double value, int significant) {
        if (value == 0) {
            return 0;
        }
        BigDecimal rounded = new BigDecimal(Double.toString(value))
                .round(new MathContext(significant, RoundingMode.HALF_UP))
                .stripTrailingZeros();
        return Math.max(0, rounded.scale());
    }
}
