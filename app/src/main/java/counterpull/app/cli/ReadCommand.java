package counterpull.app.cli;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Reads a scenario and says every problem in it. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description = "Reads a scenario and says every problem in it, with line, key, value, unit and limit.")
final class ReadCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Scenario scenario = files.any();
        // what only the whole range shows: a limb that cannot reach, a line that goes slack
        ScenarioFiles.computed(() -> scenario instanceof PressScenario press
                ? PressProfile.of(press.task())
                : ExerciseProfile.of(((ExerciseScenario) scenario).task()));
        spec.commandLine().getOut().println("Good: " + scenario.client().name() + doing(scenario) + ".");
        return Exit.GOOD;
    }

    private static String doing(Scenario scenario) {
        if (scenario instanceof PressScenario press) {
            return " on " + press.machine().name();
        }
        return scenario.about().map(about -> ", " + about.name()).orElse("");
    }
}
