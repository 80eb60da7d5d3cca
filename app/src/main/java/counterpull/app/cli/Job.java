package counterpull.app.cli;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.SplitSetup;
import counterpull.engine.choice.Strategy;
import counterpull.report.Findings;
import counterpull.report.Heading;
import counterpull.report.Plans;
import counterpull.report.Setup;
import counterpull.scenario.PressScenario;
import counterpull.scenario.units.Units;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The main job for one scenario: its question for the search, and what is shown of the answer.
 *
 * @param name what the scenario is called in what leaves the program
 * @param scenario what was put in
 * @param units the reader's units
 */
record Job(String name, PressScenario scenario, Units units) {
    Question question(List<Strategy> strategies) {
        return new Question(scenario.task(), scenario.goal(), scenario.kit(), strategies);
    }

    /** What is on the machine today. */
    Setup today() {
        return ScenarioFiles.computed(() -> Setup.today("today", scenario));
    }

    /** Today's setup if it can be computed at all: a setup that cannot is no reason to hide a better one. */
    Optional<Setup> todayIfSound() {
        try {
            return Optional.of(today());
        } catch (BadInput unsound) {
            return Optional.empty();
        }
    }

    /** Today's setup as the one to set up. */
    Findings ofToday() {
        Setup today = today();
        return new Findings(
                heading(), scenario, List.of(today), Findings.Others.none(), Plans.of(scenario, today), units);
    }

    /** The best setup of a choice, beside today's. */
    Findings of(Choice choice, Candidate best) {
        return of(choice, List.of(Setup.of("chosen", best, scenario)));
    }

    /** Both sets of a split range, beside today's. */
    Findings of(Choice choice, SplitSetup pair) {
        return of(
                choice,
                List.of(
                        Setup.of("whole range", pair.whole(), scenario),
                        Setup.of("upper range", pair.upper(), scenario)));
    }

    private Findings of(Choice choice, List<Setup> chosen) {
        Findings.Others others = new Findings.Others(todayIfSound(), Optional.of(choice));
        return new Findings(heading(), scenario, chosen, others, Plans.of(scenario, chosen.get(0)), units);
    }

    private Heading heading() {
        return new Heading(
                name, scenario.client().name(), scenario.machine().name(), LocalDate.now(), Program.version());
    }
}
