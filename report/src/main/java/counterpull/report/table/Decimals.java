package counterpull.report.table;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimal text of numbers, the same in every locale. */
public final class Decimals {
    private Decimals() {}

    /** The shortest plain decimal that reads back as the same double; no exponent. */
    public static String exact(double value) {
        return value == 0 ? "0" : plain(new BigDecimal(Double.toString(value)).stripTrailingZeros());
    }

    /** With exactly that many decimals, half away from zero; never a minus before zero. */
    public static String fixed(double value, int decimals) {
        BigDecimal scaled = new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP);
        return plain(scaled.signum() == 0 ? scaled.abs() : scaled);
    }

    private static String plain(BigDecimal value) {
        return value.toPlainString();
    }
}
