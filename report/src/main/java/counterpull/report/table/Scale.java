package counterpull.report.table;

import counterpull.scenario.units.Unit;

/**
 * How one kind of number is written in one set of units.
 *
 * @param unit label of the unit; empty for a pure number
 * @param perSi how many of these units one SI unit is
 * @param decimals digits after the point for the eye
 */
public record Scale(String unit, double perSi, int decimals) {
    static Scale of(Unit unit, int decimals) {
        return new Scale(unit.label(), unit.fromSi(1), decimals);
    }

    /** An SI value in these units. */
    public double from(double si) {
        return si * perSi;
    }

    /** An SI value for the eye, without its unit. */
    public String fixed(double si) {
        return Decimals.fixed(from(si), decimals);
    }

    /** An SI value with its unit, for running text. */
    public String words(double si) {
        boolean close = unit.isEmpty() || unit.equals("°");
        return fixed(si) + (close ? "" : "\u00A0") + unit;
    }
}
