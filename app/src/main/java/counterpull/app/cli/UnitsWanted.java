package counterpull.app.cli;

import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;
import picocli.CommandLine.Option;

/** The option that says in whose units numbers are shown. */
final class UnitsWanted {
    @Option(
            names = {"-u", "--units"},
            paramLabel = "UNITS",
            defaultValue = "metric",
            description = "Units of what is shown: metric or imperial. Default: ${DEFAULT-VALUE}.")
    private Units units;

    Units units() {
        return units;
    }

    UnitSet set() {
        return UnitSet.of(units);
    }
}
