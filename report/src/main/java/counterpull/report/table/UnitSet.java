package counterpull.report.table;

import counterpull.scenario.units.Units;

/** In which units numbers are written. */
public enum UnitSet {
    /** SI throughout, angles in radians: for machines. */
    SI,
    /** Centimetres, newtons, degrees. */
    METRIC,
    /** Inches, pounds, degrees. */
    IMPERIAL;

    /** The set that goes with a person's wish. */
    public static UnitSet of(Units units) {
        return units == Units.METRIC ? METRIC : IMPERIAL;
    }

    /** The person's wish that goes with this set; metric for machines. */
    public Units people() {
        return this == IMPERIAL ? Units.IMPERIAL : Units.METRIC;
    }
}
