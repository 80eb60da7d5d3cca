package counterpull.report.words;

import counterpull.engine.Refusal;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Unit;

/** A refusal's numbers in a reader's units. */
final class RefusalNumbers {
    private RefusalNumbers() {}

    /** One of its numbers; empty where it has none, or none with a unit that people use. */
    static String words(Refusal refusal, double si, UnitSet units) {
        if (refusal.unit().isEmpty() || !(Math.abs(si) <= Double.MAX_VALUE)) {
            return "";
        }
        return Unit.spelled(refusal.unit())
                .map(unit ->
                        units.people().written(unit.toSi(si), unit.dimension()).toString())
                .orElse("");
    }
}
