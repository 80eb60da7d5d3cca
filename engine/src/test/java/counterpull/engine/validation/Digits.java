package counterpull.engine.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as the validation log prints them. Ours is first rounded to ten significant digits and the difference taken
 * in decimal, so that a last bit that differs between machines cannot change a printed digit.
 */
final class Digits {
    private static final MathContext TEN = new MathContext(10, RoundingMode.HALF_EVEN);
    private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_EVEN);
    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final double TINY = 1e-9;

    private Digits() {}

    static String plain(double value) {
        return text(new BigDecimal(value).round(TEN));
    }

    static String ours(double ours, double published) {
        if (Math.abs(ours) < TINY && published == 0) {
            return "0";
        }
        return text(new BigDecimal(ours).round(TEN).round(SIX));
    }

    static String difference(double ours, double published) {
        BigDecimal exact = new BigDecimal(ours).round(TEN).subtract(new BigDecimal(published).round(TEN));
        double size = Math.abs(exact.doubleValue());
        if (size == 0 || size < TINY) {
            return "< 1e-9";
        }
        return size < TINY * Math.abs(published) ? "< 1e-9 of it" : text(exact.round(TWO));
    }

    private static String text(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal shortest = number.stripTrailingZeros();
        int exponent = shortest.precision() - shortest.scale() - 1;
        if (exponent >= -4 && exponent < 9) {
            return shortest.toPlainString();
        }
        BigDecimal mantissa = shortest.scaleByPowerOfTen(-exponent).stripTrailingZeros();
        return mantissa.toPlainString() + "e" + exponent;
    }
}
