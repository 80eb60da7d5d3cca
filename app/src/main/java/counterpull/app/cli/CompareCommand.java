package counterpull.app.cli;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.Heading;
import counterpull.report.page.SideBySidePage;
import counterpull.report.result.ChallengeTable;
import counterpull.report.table.TextTable;
import counterpull.report.words.ChallengeWords;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.problem.Shown;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Several exercises of one person side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        header = "Lays several exercises of one person side by side.",
        description =
                "Lays exercises of one person side by side: where in its range each joint is challenged by each, so"
                        + " that the exercise can be chosen as well as the load. The files say who; each --with is an exercise of the"
                        + " library or a file, \"files\" is what the files themselves describe. Prints a table; --into writes a page"
                        + " with charts.")
final class CompareCommand implements Callable<Integer> {
    private static final String ITSELF = "files";
    private static final int MOST = 4;

    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Option(
            names = {"-w", "--with"},
            paramLabel = "NAME|FILE",
            description = "An exercise; two to four of them, each after a --with of its own.")
    private List<String> exercises = List.of();

    @Option(
            names = {"-i", "--into"},
            paramLabel = "FILE",
            description = "Writes a page (HTML) with table and charts there.")
    private Path page;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (exercises.size() < 2 || exercises.size() > MOST) {
            throw new BadInput(List.of("--with: give two to four exercises, each after a --with of its own, not "
                    + exercises.size() + "; \"--with files\" stands for what the files themselves describe"));
        }
        for (String exercise : exercises) {
            if (Collections.frequency(exercises, exercise) > 1) {
                throw new BadInput(List.of("--with: " + Shown.shortened(exercise)
                        + " is given twice; for two setups of one exercise make a copy, change it and give its file"));
            }
        }
        List<ChallengeTable.Entry> entries = new ArrayList<>();
        String client = "";
        for (String exercise : exercises) {
            Scenario scenario = exercise.equals(ITSELF) ? files.any() : files.doing(exercise);
            client = scenario.client().name();
            entries.add(new ChallengeTable.Entry(name(scenario, exercise), profile(scenario)));
        }
        write(entries, client);
        return Exit.GOOD;
    }

    private void write(List<ChallengeTable.Entry> entries, String client) {
        StringBuilder text =
                new StringBuilder(TextTable.of(new ChallengeTable(entries).table(), units.set(), Output.width()));
        for (ChallengeTable.Entry entry : entries) {
            ChallengeWords words = new ChallengeWords(entry.profile(), units.set());
            Output.say(text, entry.name() + ". " + words.hardest());
            words.unknown().forEach(sentence -> Output.say(text, sentence));
        }
        spec.commandLine().getOut().print(text);
        if (page == null) {
            return;
        }
        Heading heading = new Heading(files.name(), client, "", LocalDate.now(), Program.version());
        try {
            Files.writeString(page, SideBySidePage.html(heading, entries, units.units()));
        } catch (IOException e) {
            throw Unwritable.page(page, e);
        }
        spec.commandLine().getOut().println("Page written to " + page);
    }

    private static String name(Scenario scenario, String exercise) {
        String unnamed = scenario instanceof PressScenario press
                ? "Press on " + press.machine().name()
                : exercise;
        return scenario.about().map(about -> about.name()).orElse(unnamed);
    }

    private static Profile profile(Scenario scenario) {
        if (scenario instanceof PressScenario press) {
            return ScenarioFiles.computed(() -> PressProfile.of(press.task()));
        }
        return ScenarioFiles.computed(() -> ExerciseProfile.of(((ExerciseScenario) scenario).task()));
    }
}
