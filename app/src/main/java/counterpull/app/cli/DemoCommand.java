package counterpull.app.cli;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Strategy;
import counterpull.report.Cautions;
import counterpull.report.Setup;
import counterpull.report.result.TextChoice;
import counterpull.report.table.Wrap;
import counterpull.report.words.ChoiceText;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The main job on the invented demo. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        header = "Does the whole job on invented people in an invented room.",
        description =
                "Shows what today's setup asks, searches the kit, explains the choice, and writes the report (HTML),"
                        + " the floor card (PDF), CSV and JSON.")
final class DemoCommand implements Callable<Integer> {
    private static final double AT_MOST_SECONDS = 600;

    /** The people of the demo. */
    enum Who {
        /** A sore kneecap joint. */
        PLOVER,
        /** A stiff hip and a short range. */
        HERON,
        /** Strong, one leg stronger and longer than the other. */
        CRANE
    }

    @Option(
            names = "--who",
            defaultValue = "plover",
            paramLabel = "NAME",
            description = "plover (sore kneecap joint), heron (stiff hip, short range) or crane (strong, uneven)."
                    + " Default: ${DEFAULT-VALUE}.")
    private Who who;

    @Option(
            names = "--into",
            defaultValue = "counterpull-demo",
            paramLabel = "FOLDER",
            description = "Where the files go. Default: ${DEFAULT-VALUE}.")
    private Path into;

    @Mixin
    private UnitsWanted units;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String name = who.name().toLowerCase(java.util.Locale.ROOT);
        Job job = new Job(
                name + " (invented)",
                ScenarioFiles.read(List.of(demo(name + ".yaml"), demo("room.yaml"))),
                units.units());
        new Folder(into).make();
        Setup today = job.today();
        out.println("Invented data: nobody here is real.");
        out.println();
        out.println("TODAY: " + job.scenario().client().name() + " on "
                + job.scenario().machine().name() + ", " + today.plates().words());
        TextChoice shown = TextChoice.usual(units.set()).withPositions(5).withWidth(Output.width());
        StringBuilder text = new StringBuilder();
        new ProfilePage(job.scenario(), today, shown).summary(text);
        out.print(text);
        out.println();
        Choice choice = new Searching(spec.commandLine().getErr())
                .run(job.question(List.of(Strategy.values())), AT_MOST_SECONDS);
        out.print(ChoiceText.of(choice, units.set(), Output.width(), 3));
        return write(job, choice, out);
    }

    private Integer write(Job job, Choice choice, PrintWriter out) {
        out.println();
        Cautions.all().forEach(caution -> out.print(Wrap.block(caution, Output.width(), "")));
        out.println();
        if (choice.best().isEmpty()) {
            return Exit.NOTHING_FEASIBLE;
        }
        Candidate best = choice.best().get();
        new Folder(into).write(job.of(choice, best), out);
        return Exit.GOOD;
    }

    private static Source demo(String file) {
        try (InputStream in = DemoCommand.class.getResourceAsStream("/counterpull/demo/" + file)) {
            return Source.of(file, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
