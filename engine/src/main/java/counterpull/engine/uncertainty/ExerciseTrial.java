package counterpull.engine.uncertainty;

import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Person;
import java.util.List;

/**
 * Any other exercise over its stated range.
 *
 * @param task the task, its joints' own limits taken off
 * @param limits the joints' own limits of each limb
 */
public record ExerciseTrial(ExerciseTask task, List<JointRanges> limits) implements Trial<ExerciseTrial> {
    /** As the task has it; refuses what its profile refuses. */
    public static ExerciseTrial of(ExerciseTask task) {
        ExerciseProfile.of(task);
        return new ExerciseTrial(task.with(PressTrial.open(task.person())), PressTrial.limits(task.person()));
    }

    /** The same with another task. */
    public ExerciseTrial with(ExerciseTask other) {
        return new ExerciseTrial(other, limits);
    }

    @Override
    public Person person() {
        return task.person();
    }

    @Override
    public Tempo tempo() {
        return task.tempo();
    }

    @Override
    public ExerciseTrial with(Person other) {
        return with(task.with(other));
    }

    @Override
    public ExerciseTrial with(Tempo other) {
        return with(task.with(other));
    }

    @Override
    public ExerciseProfile profile() {
        return ExerciseProfile.atPositionsAlone(task);
    }
}
