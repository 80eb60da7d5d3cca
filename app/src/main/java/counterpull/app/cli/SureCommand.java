package counterpull.app.cli;

import counterpull.engine.motion.Phase;
import counterpull.engine.strength.Tester;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Trial;
import counterpull.report.Cautions;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.SureJson;
import counterpull.report.result.SureTables;
import counterpull.report.table.Csv;
import counterpull.report.table.Table;
import counterpull.report.table.TextTable;
import counterpull.report.words.SureWords;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How sure the efforts of a scenario are. */
@Command(
        name = "sure",
        mixinStandardHelpOptions = true,
        header = "Says how sure the efforts are, what makes them unsure, and which reading to take next.",
        description =
                "Draws everything that the scenario knows only so far many times over (its \"uncertainty\", the strength's own"
                        + " spread, and what is assumed where nothing is stated), and says between which ends the efforts of today's setup lie,"
                        + " with which chance the ceiling is passed, what contributes most, and which reading would help most.")
final class SureCommand implements Callable<Integer> {
    private static final int LEAST_DRAWS = 100;
    private static final int MOST_DRAWS = 1_000_000;
    private static final int READINGS = 5;

    /** How the answer is written. */
    enum Format {
        /** Sentences and tables for a person. */
        TABLE,
        /** Every band. */
        CSV,
        /** Everything, for a program. */
        JSON
    }

    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "10000",
            description = "How many draws, 100 to 1000000. Default: ${DEFAULT-VALUE}.")
    private int draws;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "The same seed gives the same answer. Default: ${DEFAULT-VALUE}.")
    private int seed;

    @Option(
            names = "--tester",
            paramLabel = "TESTER",
            defaultValue = "belt-fixed",
            description = "What strength would be tested with next: hand-held, belt-fixed or isokinetic."
                    + " Default: ${DEFAULT-VALUE}.")
    private Tester tester;

    @Option(
            names = {"-p", "--positions"},
            paramLabel = "N",
            defaultValue = "9",
            description = "How many positions the table shows, evenly spread, 2 to 101. Default: ${DEFAULT-VALUE}.")
    private int positions;

    @Option(
            names = {"-f", "--format"},
            paramLabel = "FORMAT",
            defaultValue = "table",
            description = "table, csv (every band) or json (everything). Default: ${DEFAULT-VALUE}.")
    private Format format;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        within(draws, LEAST_DRAWS, MOST_DRAWS, "--draws");
        within(positions, 2, 101, "--positions");
        Scenario scenario = files.any();
        HowSure sure = ScenarioFiles.computed(() -> scenario instanceof PressScenario press
                ? sure(press.doubts(), press.looked())
                : sure(((ExerciseScenario) scenario).doubts(), ((ExerciseScenario) scenario).looked()));
        output.write(spec, text(scenario, sure));
        return Exit.GOOD;
    }

    private static void within(int value, int least, int most, String option) {
        if (value < least || value > most) {
            throw new BadInput(List.of(option + ": " + value + " must be from " + least + " to " + most));
        }
    }

    private <T extends Trial<T>> HowSure sure(Doubts<T> doubts, Looked looked) {
        return HowSure.of(doubts, Drawing.of(new Sampling<>(doubts, looked, seed, draws)), tester);
    }

    private String text(Scenario scenario, HowSure sure) {
        return switch (format) {
            case TABLE -> page(scenario, sure);
            case CSV -> Csv.of(SureTables.everything(sure), units.set());
            case JSON -> SureJson.of(sure);
        };
    }

    private String page(Scenario scenario, HowSure sure) {
        SureWords words = new SureWords(sure, units.set());
        StringBuilder text = new StringBuilder(scenario.client().name() + ": how sure the efforts are\n");
        words.all().forEach(sentence -> Output.say(text, sentence));
        if (sure.contributions().isPresent()) {
            Table bands = SureTables.bands(sure, Phase.LIFTING);
            table(text, bands.only(ProfileTables.evenly(bands.rows(), positions)));
            table(text, SureTables.contributions(sure.contributions().get(), units.set()));
            Output.say(text, SureTables.rest(sure.contributions().get()));
        }
        if (!sure.next().isEmpty()) {
            table(text, SureTables.next(sure, units.set(), READINGS));
        }
        Output.say(text, words.notVaried());
        Output.say(text, Cautions.FOR_CARD);
        return text.toString();
    }

    private void table(StringBuilder text, Table table) {
        text.append('\n').append(TextTable.of(table, units.set(), Output.width()));
    }
}
