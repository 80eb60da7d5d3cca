package counterpull.scenario.units;

import java.util.Map;

/**
 * The units in which a person wants to read results. Angles, times, ages and fractions are the same in both; a view
 * shows the other system's value in small where {@link #differsFor(Dimension)} says so.
 */
public enum Units {
    METRIC(Map.of(
            Dimension.LENGTH, Unit.CENTIMETRE,
            Dimension.AREA, Unit.SQUARE_CENTIMETRE,
            Dimension.MASS, Unit.KILOGRAM,
            Dimension.FORCE, Unit.NEWTON,
            Dimension.TORQUE, Unit.NEWTON_METRE,
            Dimension.STIFFNESS, Unit.NEWTON_PER_METRE,
            Dimension.STRESS, Unit.MEGAPASCAL,
            Dimension.SPEED, Unit.METRE_PER_SECOND)),
    IMPERIAL(Map.of(
            Dimension.LENGTH, Unit.INCH,
            Dimension.AREA, Unit.SQUARE_INCH,
            Dimension.MASS, Unit.POUND,
            Dimension.FORCE, Unit.POUND_FORCE,
            Dimension.TORQUE, Unit.FOOT_POUND_FORCE,
            Dimension.STIFFNESS, Unit.POUND_FORCE_PER_INCH,
            Dimension.STRESS, Unit.POUND_FORCE_PER_SQUARE_INCH,
            Dimension.SPEED, Unit.INCH_PER_SECOND));

    private static final Map<Dimension, Unit> SHARED = Map.of(
            Dimension.ANGLE, Unit.DEGREE,
            Dimension.ANGULAR_SPEED, Unit.DEGREE_PER_SECOND,
            Dimension.TIME, Unit.SECOND,
            Dimension.AGE, Unit.YEAR,
            Dimension.INERTIA, Unit.KILOGRAM_SQUARE_METRE,
            Dimension.RATIO, Unit.PERCENT);

    private static final int SIGNIFICANT = 3;

    private final Map<Dimension, Unit> own;

    Units(Map<Dimension, Unit> own) {
        this.own = own;
    }

    /** The unit of that dimension. */
    public Unit unit(Dimension dimension) {
        return own.getOrDefault(dimension, SHARED.get(dimension));
    }

    /** The other system. */
    public Units other() {
        return this == METRIC ? IMPERIAL : METRIC;
    }

    /** Whether the two systems write that dimension in different units. */
    public boolean differsFor(Dimension dimension) {
        return unit(dimension) != other().unit(dimension);
    }

    /** An SI value with three significant digits, its whole part never rounded, no trailing zeros: 2.5 kg, 1569 N. */
    public Written written(double si, Dimension dimension) {
        double value = unit(dimension).fromSi(si);
        return written(si, dimension, Digits.decimalsFor(value, SIGNIFICANT));
    }

    /** An SI value with a fixed number of decimals, for columns and for numbers to be set on a machine. */
    public Written written(double si, Dimension dimension, int decimals) {
        Unit unit = unit(dimension);
        return new Written(Digits.fixed(unit.fromSi(si), decimals), unit.label());
    }

    /**
     * An SI value with as many digits as its uncertainty bears: the uncertainty's two leading digits decide.
     *
     * @param band the uncertainty, SI, in the same dimension, zero or more
     */
    public Written writtenWithin(double si, double band, Dimension dimension) {
        if (band <= 0) {
            return written(si, dimension);
        }
        Unit unit = unit(dimension);
        double shown = Digits.rounded(unit.fromSi(band), 2);
        int decimals = Digits.decimalsFor(shown, 2);
        String number = Digits.fixed(unit.fromSi(si), decimals) + " ± " + Digits.fixed(shown, decimals);
        return new Written(number, unit.label());
    }
}
