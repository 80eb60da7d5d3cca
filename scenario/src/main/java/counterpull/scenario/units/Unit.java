package counterpull.scenario.units;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit that a file may use, with its exact size in SI as a quotient of two whole numbers, so that {@code 38 cm} becomes
 * the double nearest 0.38.
 *
 * <p>Sources: SI Brochure (9th edition, 2019) for SI units and the degree; the international yard and pound agreement
 * of 1959 for inch, foot (0.3048 m) and pound (0.453 592 37 kg); kilogram-force and pound-force are mass × standard
 * gravity 9.806 65 m/s² (3rd CGPM, 1901).
 */
public enum Unit {
    METRE(Dimension.LENGTH, 1, 1, "m"),
    CENTIMETRE(Dimension.LENGTH, 1, 100, "cm"),
    MILLIMETRE(Dimension.LENGTH, 1, 1000, "mm"),
    INCH(Dimension.LENGTH, 254, 10_000, "in", "inch", "inches"),
    FOOT(Dimension.LENGTH, 3048, 10_000, "ft", "foot", "feet"),

    SQUARE_METRE(Dimension.AREA, 1, 1, "m2"),
    SQUARE_CENTIMETRE(Dimension.AREA, 1, 10_000, "cm2"),
    SQUARE_MILLIMETRE(Dimension.AREA, 1, 1_000_000, "mm2"),
    SQUARE_INCH(Dimension.AREA, 64_516, 100_000_000, "in2"),

    RADIAN(Dimension.ANGLE, 1, 1, "rad"),
    DEGREE(Dimension.ANGLE, Math.PI, 180, "deg", "°", "degrees"),

    KILOGRAM(Dimension.MASS, 1, 1, "kg"),
    GRAM(Dimension.MASS, 1, 1000, "g"),
    POUND(Dimension.MASS, 45_359_237, 100_000_000, "lb", "lbs"),
    STONE(Dimension.MASS, 635_029_318, 100_000_000, "st"),

    NEWTON(Dimension.FORCE, 1, 1, "N"),
    KILONEWTON(Dimension.FORCE, 1000, 1, "kN"),
    POUND_FORCE(Dimension.FORCE, 44_482_216_152_605.0, 1e13, "lbf"),
    KILOGRAM_FORCE(Dimension.FORCE, 980_665, 100_000, "kgf"),

    NEWTON_METRE(Dimension.TORQUE, 1, 1, "N·m", "Nm", "N m"),
    FOOT_POUND_FORCE(Dimension.TORQUE, 44_482_216_152_605.0 * 0.3048, 1e13, "ft·lbf", "lbf·ft", "ft lbf", "lbf ft"),
    INCH_POUND_FORCE(Dimension.TORQUE, 44_482_216_152_605.0 * 0.0254, 1e13, "in·lbf", "lbf·in", "in lbf", "lbf in"),

    NEWTON_PER_METRE(Dimension.STIFFNESS, 1, 1, "N/m"),
    NEWTON_PER_CENTIMETRE(Dimension.STIFFNESS, 100, 1, "N/cm"),
    POUND_FORCE_PER_INCH(Dimension.STIFFNESS, 44_482_216_152_605.0, 1e13 * 0.0254, "lbf/in"),

    PASCAL(Dimension.STRESS, 1, 1, "Pa"),
    KILOPASCAL(Dimension.STRESS, 1000, 1, "kPa"),
    MEGAPASCAL(Dimension.STRESS, 1_000_000, 1, "MPa"),
    POUND_FORCE_PER_SQUARE_INCH(Dimension.STRESS, 44_482_216_152_605.0, 1e13 * 0.00064516, "psi"),

    SECOND(Dimension.TIME, 1, 1, "s"),
    MILLISECOND(Dimension.TIME, 1, 1000, "ms"),
    MINUTE(Dimension.TIME, 60, 1, "min"),

    YEAR(Dimension.AGE, 1, 1, "years", "year"),

    METRE_PER_SECOND(Dimension.SPEED, 1, 1, "m/s"),
    CENTIMETRE_PER_SECOND(Dimension.SPEED, 1, 100, "cm/s"),
    INCH_PER_SECOND(Dimension.SPEED, 254, 10_000, "in/s"),

    RADIAN_PER_SECOND(Dimension.ANGULAR_SPEED, 1, 1, "rad/s"),
    DEGREE_PER_SECOND(Dimension.ANGULAR_SPEED, Math.PI, 180, "deg/s", "°/s"),

    KILOGRAM_SQUARE_METRE(Dimension.INERTIA, 1, 1, "kg·m2", "kg m2"),

    ONE(Dimension.RATIO, 1, 1, ""),
    PERCENT(Dimension.RATIO, 1, 100, "%", "percent");

    private final Dimension dimension;
    private final double numerator;
    private final double denominator;
    private final List<String> spellings;

    Unit(Dimension dimension, double numerator, double denominator, String... spellings) {
        this.dimension = dimension;
        this.numerator = numerator;
        this.denominator = denominator;
        this.spellings = List.of(spellings);
    }

    /** What kind of quantity this unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** How the unit is written in a file; empty for a pure number. */
    public String symbol() {
        return spellings.get(0);
    }

    /** Every spelling that is read, the {@linkplain #symbol() symbol} first. */
    public List<String> spellings() {
        return spellings;
    }

    /** How the unit is written for the eye: ° for degrees, ² for squares, · and % as they are. */
    public String label() {
        return symbol().replace("deg", "°").replace('2', '²');
    }

    /** A number of these units, in SI. */
    public double toSi(double value) {
        return value * numerator / denominator;
    }

    /** An SI number, in these units. */
    public double fromSi(double si) {
        return si * denominator / numerator;
    }

    /** The unit with that spelling; {@code *} and {@code ⋅} stand for {@code ·}, {@code ²} for {@code 2}. */
    public static Optional<Unit> spelled(String text) {
        String plain = plain(text);
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(plain))
                .findFirst();
    }

    /** All units of one dimension, the SI unit first. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .toList();
    }

    /** The unit whose numbers are SI numbers (years for an age). */
    public static Unit si(Dimension dimension) {
        return of(dimension).get(0);
    }

    private static String plain(String text) {
        return text.strip()
                .replace('*', '·')
                .replace('\u22C5', '·')
                .replace('²', '2')
                .replaceAll("\\s*·\\s*", "·")
                .replaceAll("\\s+", " ");
    }
}
