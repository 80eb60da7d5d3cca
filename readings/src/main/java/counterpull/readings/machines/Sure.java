package counterpull.readings.machines;

import counterpull.bench.Estimate;
import counterpull.scenario.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for a scenario in a person's unit, with as many digits as they bear: two of the uncertainty's. */
final class Sure {
    private static final int TWO = 2;

    private Sure() {}

    /** The value of an estimate. */
    static String value(Estimate estimate, Unit unit) {
        return number(unit.fromSi(estimate.value()), Math.abs(unit.fromSi(estimate.standardError()))) + symbol(unit);
    }

    /** Its standard uncertainty. */
    static String unsure(Estimate estimate, Unit unit) {
        double sd = Math.abs(unit.fromSi(estimate.standardError()));
        return plain(new BigDecimal(sd).round(new MathContext(TWO, RoundingMode.HALF_EVEN))) + symbol(unit);
    }

    /** A value that is known so well, SI. */
    static String known(double si, double sd, Unit unit) {
        return number(unit.fromSi(si), Math.abs(unit.fromSi(sd))) + symbol(unit);
    }

    private static String number(double value, double sd) {
        if (!(sd > 0)) {
            return plain(new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN)));
        }
        int leading = (int) Math.floor(Math.log10(sd));
        return plain(new BigDecimal(value).setScale(Math.max(0, TWO - 1 - leading), RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String symbol(Unit unit) {
        return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    }

    /** A name as YAML takes it whatever is in it. */
    static String quoted(String name) {
        return "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
