package counterpull.app.cli;

import counterpull.report.Findings;
import counterpull.report.card.ExerciseCard;
import counterpull.report.card.FloorCard;
import counterpull.report.page.ExerciseFindings;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The floor card of today's setup. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        description = "Writes the one-page floor card (PDF) of the setup that the scenario already describes (its"
                + " \"resists\"), without searching for a better one.")
final class CardCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            defaultValue = "card.pdf",
            description = "Where to. Default: ${DEFAULT-VALUE}.")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (file.toString().equals("-")) {
            throw new BadInput(List.of("--output: a card is a PDF and not for the terminal; name a file"));
        }
        Scenario scenario = files.any();
        Card card = scenario instanceof PressScenario press ? card(press) : card((ExerciseScenario) scenario);
        try (OutputStream to = Files.newOutputStream(file)) {
            card.write(to).forEach(spec.commandLine().getErr()::println);
        } catch (IOException e) {
            throw Unwritable.file(file, e);
        }
        spec.commandLine().getOut().println("Card written to " + file);
        return Exit.GOOD;
    }

    /** A card that is ready to be written, with the notes that come of it. */
    private interface Card {
        List<String> write(OutputStream to) throws IOException;
    }

    private Card card(PressScenario scenario) {
        Findings findings = new Job(files.name(), scenario, units.units()).ofToday();
        return to -> FloorCard.pdf(findings, to);
    }

    private Card card(ExerciseScenario scenario) {
        ExerciseFindings findings = ExerciseJob.findings(files.name(), scenario, units.units());
        return to -> ExerciseCard.pdf(findings, to);
    }
}
