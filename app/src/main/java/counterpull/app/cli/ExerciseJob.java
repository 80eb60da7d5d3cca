package counterpull.app.cli;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.Heading;
import counterpull.report.page.ExerciseFindings;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.units.Units;
import java.time.LocalDate;

/** An exercise, computed for whatever leaves the program. */
final class ExerciseJob {
    private ExerciseJob() {}

    static ExerciseFindings findings(String name, ExerciseScenario scenario, Units units) {
        ExerciseProfile profile = ScenarioFiles.computed(() -> ExerciseProfile.of(scenario.task()));
        Heading heading = new Heading(name, scenario.client().name(), "", LocalDate.now(), Program.version());
        return new ExerciseFindings(heading, scenario, profile, units);
    }
}
