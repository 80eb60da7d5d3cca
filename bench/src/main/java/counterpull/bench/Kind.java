package counterpull.bench;

import java.math.BigDecimal;
import java.math.MathContext;

/** What a number in a remark measures; a view has the reader's unit for each. */
public enum Kind {
    LENGTH("m"),
    FORCE("N"),
    MASS("kg"),
    ANGLE("rad"),
    TORQUE("N·m"),
    STIFFNESS("N/m"),
    STRESS("Pa"),
    TIME("s"),
    FORCE_RATE("N/s"),
    /** A share, said as a percentage. */
    SHARE(""),
    /** A pure number. */
    NUMBER(""),
    /** A whole number of things. */
    COUNT("");

    private static final MathContext FIVE_DIGITS = new MathContext(5);
    private final String unit;

    Kind(String unit) {
        this.unit = unit;
    }

    /** SI unit; empty for a pure number. */
    public String unit() {
        return unit;
    }

    /** A value with its SI unit, five digits. */
    public String inSi(double value) {
        String number = Double.isFinite(value)
                ? new BigDecimal(value).round(FIVE_DIGITS).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
