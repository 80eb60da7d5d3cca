package counterpull.scenario.fields;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.Reading.Refused;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what is wrong with a text that should be a quantity. */
final class QuantityProblems {
    private static final Pattern FRACTION = Pattern.compile("\\d+/\\d+");

    private QuantityProblems() {}

    /** The problem of a text that was refused. */
    static Problem refused(Place place, String text, Dimension due, Refused refused) {
        return switch (refused.reason()) {
            case NOT_A_NUMBER -> notANumber(place, text, due);
            case NOT_FINITE ->
                new Problem(
                        Code.NOT_FINITE,
                        place,
                        new Found(text, units(due), ""),
                        "must be a finite number",
                        "Write it like " + example(due));
            case DECIMAL_COMMA ->
                new Problem(
                        Code.DECIMAL_COMMA,
                        place,
                        new Found(text, units(due), ""),
                        "a comma inside a number can be read in two ways",
                        "Write a point for decimals and nothing for thousands: 1.75 m, 1200 N");
            case UNIT_MISSING ->
                new Problem(
                        Code.UNIT_MISSING,
                        place,
                        new Found(text, "", ""),
                        "\"" + refused.detail() + "\" has no unit; " + article(due) + " is due",
                        "Add one of: " + units(due));
            case UNKNOWN_UNIT -> unknownUnit(place, text, due, refused.detail());
            case WRONG_UNIT -> wrongUnit(place, text, due, refused.detail());
        };
    }

    /** The problem of a quantity outside its interval. */
    static Problem outside(Place place, Quantity value, Measure measure) {
        boolean below = value.si() < measure.low().si();
        Quantity limit = below ? measure.low() : measure.high();
        boolean sign = below && value.si() <= 0 && measure.low().si() > 0;
        return new Problem(
                sign ? Code.MUST_BE_POSITIVE : Code.OUTSIDE_LIMITS,
                place,
                new Found(value.toString(), value.unit().symbol(), limit.toString()),
                Shown.shortened(value.toString()) + " is " + (below ? "below " : "above ") + limit
                        + ", the limit for this value",
                "Check the number and its unit");
    }

    private static Problem notANumber(Place place, String text, Dimension due) {
        return new Problem(
                Code.NOT_A_NUMBER,
                place,
                new Found(text, units(due), ""),
                "this is not a number with its unit; " + article(due) + " is due",
                "Write it like " + example(due));
    }

    private static Problem unknownUnit(Place place, String text, Dimension due, String unit) {
        List<String> known = Unit.of(due).stream().map(Unit::symbol).toList();
        return new Problem(
                Code.UNKNOWN_UNIT,
                place,
                new Found(text, unit, ""),
                "\"" + Shown.shortened(unit) + "\" is not a unit of " + due.words(),
                FRACTION.matcher(unit).lookingAt()
                        ? "Write a fraction with a point, such as 13.5 for 13 1/2"
                        : Nearest.hint(unit, known, "Known: " + units(due)));
    }

    private static Problem wrongUnit(Place place, String text, Dimension due, String unit) {
        Dimension given = Unit.spelled(unit).orElseThrow().dimension();
        String message = given == Dimension.RATIO
                ? article(due) + " is due, not a fraction"
                : "\"" + unit + "\" measures " + given.words() + ", but " + article(due) + " is due";
        return new Problem(Code.WRONG_UNIT, place, new Found(text, unit, ""), message, wrongUnitHint(given, due));
    }

    private static String wrongUnitHint(Dimension given, Dimension due) {
        return given == Dimension.MASS && due == Dimension.FORCE
                ? "For what a scale shows write kgf or lbf, else N"
                : "Use one of: " + units(due);
    }

    /** The units that can be written, the one that people use most first. */
    private static String units(Dimension due) {
        Unit usual = Units.METRIC.unit(due);
        return Stream.concat(Stream.of(usual), Unit.of(due).stream().filter(unit -> unit != usual))
                .map(unit -> unit == Unit.ONE ? "a number without unit" : unit.symbol())
                .collect(Collectors.joining(", "));
    }

    private static String article(Dimension due) {
        String article = "aeiou".indexOf(due.words().charAt(0)) >= 0 ? "an " : "a ";
        return article + due.words();
    }

    private static String example(Dimension due) {
        return switch (due) {
            case LENGTH -> "38 cm, 15 in or 5 ft 9 in";
            case AREA -> "60 mm2";
            case ANGLE -> "45 deg";
            case MASS -> "60 kg or 132 lb";
            case FORCE -> "90 N or 20 lbf";
            case TORQUE -> "96 N·m or 71 ft·lbf";
            case STIFFNESS -> "150 N/m";
            case STRESS -> "5 MPa";
            case TIME -> "2 s";
            case AGE -> "41 years";
            case SPEED -> "0.4 m/s";
            case ANGULAR_SPEED -> "30 deg/s";
            case INERTIA -> "0.4 kg·m2";
            case RATIO -> "0.5 or 50 %";
        };
    }
}
