package counterpull.report;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.Search;
import counterpull.engine.choice.Strategy;
import counterpull.scenario.PressScenario;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import counterpull.scenario.units.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The commented example scenario (invented) and changes of it, searched for real. */
public final class Demo {
    private static final Findings USUAL = findings(text(), Units.METRIC);

    private Demo() {}

    /** The example's text. */
    public static String text() {
        try (InputStream in = PressScenario.class.getResourceAsStream("/counterpull/scenario/example.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("further stops to try: 1", "further stops to try: 0")
                    .replace("seats to try: [back 2, back 3]", "seats to try: [back 2]");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the example comes to, metric. */
    public static Findings usual() {
        return USUAL;
    }

    /** A scenario's text as a scenario. */
    public static PressScenario scenario(String yaml) {
        ScenarioReader.Result result = ScenarioReader.read(List.of(Source.of("example.yaml", yaml)));
        return result.press()
                .orElseThrow(
                        () -> new IllegalStateException(result.problems().all().toString()));
    }

    /** A scenario searched to its end, its best setup chosen. */
    public static Findings findings(String yaml, Units units) {
        PressScenario scenario = scenario(yaml);
        Choice choice = choice(scenario);
        Setup today = Setup.today("today", scenario);
        Setup chosen =
                choice.best().map(best -> Setup.of("chosen", best, scenario)).orElse(today);
        return of(scenario, chosen, new Findings.Others(Optional.of(today), Optional.of(choice)), units);
    }

    /** The same with what is on the machine as the chosen setup; nothing searched. */
    public static Findings asLoaded(String yaml, Units units) {
        PressScenario scenario = scenario(yaml);
        return of(scenario, Setup.today("chosen", scenario), Findings.Others.none(), units);
    }

    private static Findings of(PressScenario scenario, Setup chosen, Findings.Others others, Units units) {
        Heading heading = new Heading(
                "example", scenario.client().name(), scenario.machine().name(), LocalDate.of(2026, 11, 25), "0.1.0");
        return new Findings(heading, scenario, List.of(chosen), others, Plans.of(scenario, chosen), units);
    }

    static Choice choice(PressScenario scenario) {
        List<Strategy> strategies =
                List.of(Strategy.LOAD_ALONE, Strategy.RELIEVE_LOW, Strategy.ADD_HIGH, Strategy.BOTH);
        Search search = new Search(new Question(scenario.task(), scenario.goal(), scenario.kit(), strategies));
        while (search.advance(1000)) {
            // the example is small: no budget beyond each step
        }
        return search.result();
    }

    /** A setup's candidate by strategy. */
    public static Optional<Candidate> best(Strategy strategy) {
        return USUAL.others()
                .choice()
                .orElseThrow()
                .ranking(strategy)
                .flatMap(r -> r.best(1).stream().findFirst());
    }
}
