package counterpull.readings;

import java.util.List;

/**
 * Everything that a file of readings holds, in the file's order of kinds.
 *
 * @param subjects what was measured
 */
public record Readings(List<Subject> subjects) {
    public Readings {
        subjects = List.copyOf(subjects);
    }
}
