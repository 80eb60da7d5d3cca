package counterpull.app.cli;

import counterpull.report.page.ExercisePage;
import counterpull.report.page.ReportWriter;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The report of what a scenario says, of any exercise. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description =
                "Writes one page (HTML) about the setup or the exercise that the scenario describes: figure, charts,"
                        + " numbers, what is not known. The page stands alone and loads nothing.")
final class ReportCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            defaultValue = "report.html",
            description = "Where to; \"-\" is the terminal. Default: ${DEFAULT-VALUE}.")
    private Path file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Scenario scenario = files.any();
        String page = scenario instanceof PressScenario press ? page(press) : page((ExerciseScenario) scenario);
        if (file.toString().equals("-")) {
            spec.commandLine().getOut().print(page);
            return Exit.GOOD;
        }
        try {
            Files.writeString(file, page);
        } catch (IOException e) {
            throw Unwritable.file(file, e);
        }
        spec.commandLine().getOut().println("Report written to " + file);
        return Exit.GOOD;
    }

    private String page(PressScenario scenario) {
        return ReportWriter.html(new Job(files.name(), scenario, units.units()).ofToday());
    }

    private String page(ExerciseScenario scenario) {
        return ExercisePage.html(ExerciseJob.findings(files.name(), scenario, units.units()));
    }
}
