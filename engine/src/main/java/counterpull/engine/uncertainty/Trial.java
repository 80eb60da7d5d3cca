package counterpull.engine.uncertainty;

import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.Profile;
import java.util.List;

/**
 * What is computed again and again with its inputs a little different: a task with what stays put while they differ.
 *
 * <p>A person's own limits of their joints are not held here: whether a draw passes one is counted, not refused.
 *
 * @param <T> the kind itself
 */
public sealed interface Trial<T extends Trial<T>> permits PressTrial, ExerciseTrial {
    /** Who. */
    Person person();

    /** How fast. */
    Tempo tempo();

    /** The same with another person. */
    T with(Person other);

    /** The same at another tempo. */
    T with(Tempo other);

    /** The joints' own limits of each limb, in the person's order. */
    List<JointRanges> limits();

    /** What it asks. Refuses as the engine does. */
    Profile profile();
}
