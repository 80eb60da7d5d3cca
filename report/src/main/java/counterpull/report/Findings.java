package counterpull.report;

import counterpull.engine.Require;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Goal;
import counterpull.report.table.UnitSet;
import counterpull.scenario.PressScenario;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a page, a card or a machine-readable result is written from.
 *
 * @param heading names, day, version
 * @param scenario what was put in
 * @param chosen the setup that was chosen; two where the range is split: the whole range's set first
 * @param others what it is compared with
 * @param plan how much is done
 * @param units the reader's units
 */
public record Findings(
        Heading heading, PressScenario scenario, List<Setup> chosen, Others others, SessionPlan plan, Units units) {
    public Findings {
        chosen = List.copyOf(chosen);
        Require.within(chosen.size(), new Require.Limits(1, 2), "chosen setups", "");
    }

    /**
     * What the chosen setup is compared with.
     *
     * @param today what is on the machine today
     * @param choice what the search found
     */
    public record Others(Optional<Setup> today, Optional<Choice> choice) {
        /** Nothing to compare with. */
        public static Others none() {
            return new Others(Optional.empty(), Optional.empty());
        }
    }

    /** The first of the chosen setups. */
    public Setup first() {
        return chosen.get(0);
    }

    /** Whether the range is split between two sets. */
    public boolean split() {
        return chosen.size() == 2;
    }

    /** What was asked of a setup. */
    public Goal goal() {
        return scenario.goal();
    }

    /** The reader's units for tables. */
    public UnitSet unitSet() {
        return UnitSet.of(units);
    }
}
