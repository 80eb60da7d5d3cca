package counterpull.readings.table;

import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's heading: "Force (kgf)", "Length [mm]", "time, s", "knee angle / deg".
 *
 * @param text as it stands in the file
 * @param name without the unit
 * @param unit the unit as it is written, whether known or not; empty where none is there
 */
record Heading(String text, String name, String unit) {
    private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*[(\\[{]\\s*([^)\\]}]*?)\\s*[)\\]}]\\s*");
    private static final Pattern AFTER = Pattern.compile("(.*?)(?:\\s*[,/;:]\\s*|\\s+in\\s+|\\s+|_)([^\\s,/;:_]+)\\s*");

    static Heading of(String text) {
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches()) {
            return new Heading(text, brackets.group(1), brackets.group(2));
        }
        Matcher after = AFTER.matcher(text);
        if (after.matches() && isUnit(after.group(2))) {
            return new Heading(text, after.group(1), after.group(2));
        }
        return isUnit(text) ? new Heading(text, "", text) : new Heading(text, text, "");
    }

    private static boolean isUnit(String text) {
        return known(text).filter(unit -> unit.dimension() != Dimension.RATIO).isPresent() || text.equals("%");
    }

    /** The unit of a spelling, a few more than files of readings allow; the reading still has the file's own symbol. */
    static Optional<Unit> known(String text) {
        Optional<Unit> exact = text.isEmpty() ? Optional.empty() : Unit.spelled(text);
        return exact.isPresent() ? exact : Unit.spelled(other(text.toLowerCase(Locale.ROOT)));
    }

    private static String other(String lower) {
        return switch (lower) {
            case "sec", "secs", "second", "seconds" -> "s";
            case "msec", "millisecond", "milliseconds" -> "ms";
            case "minute", "minutes" -> "min";
            case "newton", "newtons" -> "N";
            case "kn" -> "kN";
            case "kilogram-force", "kg-force", "kp" -> "kgf";
            case "lb-force", "pound-force", "pounds-force" -> "lbf";
            case "metre", "metres", "meter", "meters" -> "m";
            case "centimetre", "centimetres", "centimeter", "centimeters" -> "cm";
            case "millimetre", "millimetres", "millimeter", "millimeters" -> "mm";
            case "degree" -> "deg";
            case "kgs", "kilogram", "kilograms", "kilo", "kilos" -> "kg";
            case "pound", "pounds" -> "lb";
            case "newton metre", "newton metres", "newton meter", "newton meters", "n·m", "nm" -> "N·m";
            default -> "?";
        };
    }

    /** Lower case, letters and digits only, single spaces. */
    static String folded(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
