package counterpull.readings.people;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers for a scenario, with one digit more than their uncertainty bears. */
final class Rounded {
    private Rounded() {}

    static String degrees(double radians) {
        return plain(Math.toDegrees(radians), 1) + " deg";
    }

    static String torque(double newtonMetres) {
        return plain(newtonMetres, 1) + " N·m";
    }

    static String centimetres(double metres) {
        return plain(100 * metres, 1) + " cm";
    }

    static String percent(double share) {
        return plain(100 * share, 1) + " %";
    }

    static String kilograms(double kilograms) {
        return plain(kilograms, 1) + " kg";
    }

    static String plain(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
