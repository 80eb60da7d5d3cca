package counterpull.app.cli;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Strategy;
import counterpull.report.words.ChoiceText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Searches the kit. */
@Command(
        name = "choose",
        mixinStandardHelpOptions = true,
        header = "Searches the kit for the setups that come nearest what is wanted.",
        description =
                "Judges every setup that the kit allows, within every limit, says why the best few are there and what"
                        + " stopped the rest. With --into it also writes the report (HTML), the floor card (PDF), CSV and"
                        + " JSON of the best.",
        footer = {"", "Exit code 3 where nothing keeps every limit: then it says which limit, and by how much."})
final class ChooseCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Option(names = "--into", paramLabel = "FOLDER", description = "Writes report, card, CSV and JSON there.")
    private Path into;

    @Option(
            names = "--best",
            paramLabel = "N",
            defaultValue = "5",
            description = "How many setups to show of each strategy. Default: ${DEFAULT-VALUE}.")
    private int best;

    @Option(
            names = "--strategy",
            split = ",",
            paramLabel = "STRATEGY",
            description =
                    "Only these, with commas between: load-alone, relieve-low, add-high, both, split-range. Default: all.")
    private List<Strategy> strategies = List.of(Strategy.values());

    @Option(
            names = "--within",
            paramLabel = "TIME",
            defaultValue = "10 min",
            description = "Stops then with what it has, for instance \"30 s\". Default: ${DEFAULT-VALUE}.")
    private String within;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (best < 1 || best > 100) {
            throw new BadInput(List.of("--best: " + best + " must be from 1 to 100"));
        }
        double seconds = Asked.seconds("--within", within);
        Job job = new Job(files.name(), files.read(), units.units());
        if (into != null) {
            new Folder(into).make();
        }
        Choice choice = ScenarioFiles.computed(
                () -> new Searching(spec.commandLine().getErr()).run(job.question(strategies), seconds));
        output.write(spec, ChoiceText.of(choice, units.set(), Output.width(), best));
        write(job, choice);
        boolean any = choice.feasible() || !choice.splits().isEmpty();
        return any ? Exit.GOOD : Exit.NOTHING_FEASIBLE;
    }

    private void write(Job job, Choice choice) {
        if (into == null) {
            return;
        }
        Optional<Candidate> first = choice.best();
        if (first.isPresent()) {
            new Folder(into)
                    .write(job.of(choice, first.get()), spec.commandLine().getOut());
        } else if (!choice.splits().isEmpty()) {
            new Folder(into)
                    .write(
                            job.of(choice, choice.splits().get(0)),
                            spec.commandLine().getOut());
        } else {
            spec.commandLine().getErr().println("Nothing keeps every limit, so nothing is written to " + into + ".");
        }
    }
}
