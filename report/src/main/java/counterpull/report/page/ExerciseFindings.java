package counterpull.report.page;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.Heading;
import counterpull.report.table.UnitSet;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.units.Units;

/**
 * What the report of one exercise is written from.
 *
 * @param heading what stands at the head
 * @param scenario what was given
 * @param profile what it asks
 * @param units what the reader reads
 */
public record ExerciseFindings(Heading heading, ExerciseScenario scenario, ExerciseProfile profile, Units units) {
    /** The units of numbers in tables and sentences. */
    public UnitSet unitSet() {
        return UnitSet.of(units);
    }

    /** What the exercise is called: by its author, else by its file. */
    public String name() {
        return scenario.about().map(about -> about.name()).orElse(heading.scenario());
    }
}
