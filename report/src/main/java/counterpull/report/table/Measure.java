package counterpull.report.table;

import counterpull.scenario.units.Unit;

/**
 * What kind of number a column holds, with how it is written in each set of units. A length of rubber over its natural
 * length is a pure number here, never a percentage: that would be ambiguous.
 */
public enum Measure {
    ANGLE(Scale.of(Unit.RADIAN, 4), Scale.of(Unit.DEGREE, 1), Scale.of(Unit.DEGREE, 1)),
    LENGTH(Scale.of(Unit.METRE, 4), Scale.of(Unit.CENTIMETRE, 1), Scale.of(Unit.INCH, 2)),
    MASS(Scale.of(Unit.KILOGRAM, 2), Scale.of(Unit.KILOGRAM, 2), Scale.of(Unit.POUND, 1)),
    FORCE(Scale.of(Unit.NEWTON, 1), Scale.of(Unit.NEWTON, 0), Scale.of(Unit.POUND_FORCE, 1)),
    FORCE_RATE(new Scale("N/s", 1, 0), new Scale("N/s", 1, 0), new Scale("lbf/s", Unit.POUND_FORCE.fromSi(1), 0)),
    /** Forces that are read on a scale, not asked of a person: a tenth more. */
    FORCE_FINE(Scale.of(Unit.NEWTON, 3), Scale.of(Unit.NEWTON, 2), Scale.of(Unit.POUND_FORCE, 2)),
    TORQUE(Scale.of(Unit.NEWTON_METRE, 2), Scale.of(Unit.NEWTON_METRE, 1), Scale.of(Unit.FOOT_POUND_FORCE, 1)),
    TORQUE_PER_ANGLE(
            new Scale("N·m/rad", 1, 2),
            new Scale("N·m/°", Math.PI / 180, 2),
            new Scale("ft·lbf/°", Unit.FOOT_POUND_FORCE.fromSi(1) * Math.PI / 180, 2)),
    STRESS(Scale.of(Unit.PASCAL, 0), Scale.of(Unit.MEGAPASCAL, 2), Scale.of(Unit.POUND_FORCE_PER_SQUARE_INCH, 0)),
    EFFORT(Scale.of(Unit.ONE, 4), Scale.of(Unit.PERCENT, 0), Scale.of(Unit.PERCENT, 0)),
    /** Efforts and shortfalls that are compared: a tenth more. */
    EFFORT_FINE(Scale.of(Unit.ONE, 4), Scale.of(Unit.PERCENT, 1), Scale.of(Unit.PERCENT, 1)),
    FRACTION(Scale.of(Unit.ONE, 4), Scale.of(Unit.PERCENT, 0), Scale.of(Unit.PERCENT, 0)),
    NUMBER(Scale.of(Unit.ONE, 3), Scale.of(Unit.ONE, 3), Scale.of(Unit.ONE, 3)),
    NUMBER_ROUGH(Scale.of(Unit.ONE, 1), Scale.of(Unit.ONE, 1), Scale.of(Unit.ONE, 1)),
    COUNT(Scale.of(Unit.ONE, 0), Scale.of(Unit.ONE, 0), Scale.of(Unit.ONE, 0)),
    AREA(new Scale("m²", 1, 6), Scale.of(Unit.SQUARE_MILLIMETRE, 0), Scale.of(Unit.SQUARE_INCH, 2)),
    SPEED(Scale.of(Unit.METRE_PER_SECOND, 3), Scale.of(Unit.METRE_PER_SECOND, 3), Scale.of(Unit.INCH_PER_SECOND, 1)),
    /** Speeds that a person pictures, not sets: how fast something arrives. */
    SPEED_ROUGH(new Scale("m/s", 1, 3), new Scale("m/s", 1, 1), new Scale("ft/s", Unit.FOOT.fromSi(1), 1)),
    /** Lengths that a person pictures. */
    LENGTH_ROUGH(Scale.of(Unit.METRE, 3), Scale.of(Unit.CENTIMETRE, 0), Scale.of(Unit.INCH, 0)),
    ACCELERATION(new Scale("m/s²", 1, 3), new Scale("m/s²", 1, 3), new Scale("in/s²", Unit.INCH.fromSi(1), 1)),
    ANGULAR_SPEED(new Scale("rad/s", 1, 3), Scale.of(Unit.DEGREE_PER_SECOND, 1), Scale.of(Unit.DEGREE_PER_SECOND, 1)),
    TIME(Scale.of(Unit.SECOND, 2), Scale.of(Unit.SECOND, 2), Scale.of(Unit.SECOND, 2));

    private final Scale si;
    private final Scale metric;
    private final Scale imperial;

    Measure(Scale si, Scale metric, Scale imperial) {
        this.si = si;
        this.metric = metric;
        this.imperial = imperial;
    }

    /** How it is written in a set of units. */
    public Scale in(UnitSet units) {
        return units == UnitSet.SI ? si : units == UnitSet.METRIC ? metric : imperial;
    }

    /** An SI value with its unit, for running text; a dash where it is not known. */
    public String words(double si, UnitSet units) {
        if (!(Math.abs(si) <= Double.MAX_VALUE)) {
            return "not known";
        }
        return in(units).words(si);
    }
}
