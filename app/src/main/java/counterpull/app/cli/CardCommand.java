package counterpull.app.cli;

import counterpull.report.Findings;
import counterpull.report.card.FloorCard;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
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
        Job job = new Job(files.name(), files.read(), units.units());
        Findings findings = job.ofToday();
        try (OutputStream to = Files.newOutputStream(file)) {
            FloorCard.pdf(findings, to).forEach(spec.commandLine().getErr()::println);
        } catch (IOException e) {
            throw Unwritable.file(file, e);
        }
        spec.commandLine().getOut().println("Card written to " + file);
        return Exit.GOOD;
    }
}
