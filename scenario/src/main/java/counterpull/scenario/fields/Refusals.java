package counterpull.scenario.fields;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import counterpull.scenario.units.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Says an engine's refusal in a person's units. */
public final class Refusals {
    private Refusals() {}

    /** The problem at that place. */
    public static Problem problem(Refusal refusal, Place place) {
        String unit = written(refusal.value(), refusal.unit()).label();
        String value = shown(refusal.value(), refusal.unit());
        String limit = shown(refusal.limit(), refusal.unit());
        if (value.equals(limit) && refusal.value() != refusal.limit()) {
            value = (refusal.value() < refusal.limit() ? "a little less than " : "a little more than ") + limit;
        }
        String numbers = limit.isEmpty() ? value : value + ", limit " + limit;
        String hint = numbers.isEmpty() ? "" : subject(refusal) + " is " + numbers;
        return new Problem(
                Code.of(refusal.fault()), place, new Found(value, unit, limit), sentence(refusal, limit), hint);
    }

    /** What the numbers are of, where the sentence has not just named it. */
    private static String subject(Refusal refusal) {
        String quantity = refusal.quantity();
        boolean named = quantity.isEmpty()
                || refusal.fault() == Fault.OUTSIDE_LIMITS
                || refusal.getMessage().contains(quantity);
        return named ? "It" : "The " + quantity;
    }

    /** Sentences of limits carry SI numbers; they are said again without them. */
    private static String sentence(Refusal refusal, String limit) {
        return switch (refusal.fault()) {
            case OUTSIDE_LIMITS ->
                refusal.quantity()
                        + (refusal.value() < refusal.limit() ? " must be at least " : " must be at most ")
                        + limit;
            default -> refusal.getMessage();
        };
    }

    private static String shown(double si, String unit) {
        return Double.isNaN(si) ? "" : written(si, unit).toString();
    }

    /** A number in a unit that no file is written in, as short as a person can use. */
    private static String plain(double si) {
        return Double.isInfinite(si) || Double.isNaN(si)
                ? String.valueOf(si)
                : new BigDecimal(si)
                        .round(new MathContext(3, RoundingMode.HALF_UP))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static Written written(double si, String unit) {
        Optional<Unit> known = unit.isEmpty() ? Optional.empty() : Unit.spelled(unit);
        if (known.isEmpty() || !(Math.abs(si) <= Double.MAX_VALUE)) {
            return new Written(plain(si), unit);
        }
        return Units.METRIC.written(known.get().toSi(si), known.get().dimension());
    }
}
