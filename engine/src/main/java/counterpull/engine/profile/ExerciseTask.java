package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;

/**
 * One person doing one exercise with so much chosen weight: the input of an exercise's profile.
 *
 * @param person who; each limb's range is in the movement's driving coordinate
 * @param exercise what, against what
 * @param plates chosen plates (or stack, or dumbbell), kg, zero or more
 * @param tempo how fast
 * @param positions how many positions of the range to look at, 3 or more
 */
public record ExerciseTask(Person person, Exercise exercise, double plates, Tempo tempo, int positions) {
    private static final Require.Limits PLATES = new Require.Limits(0, 2000);

    public ExerciseTask {
        Require.within(positions, new Require.Limits(3, 10001), "positions of the range", "");
        Require.within(plates, PLATES, "chosen plates", "kg");
        if (plates > 0 && !exercise.takesPlates()) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "chosen plates",
                    plates,
                    0,
                    "kg",
                    "nothing in this exercise takes plates: give their mass to what resists");
        }
    }

    /** The same with other plates, kg. */
    public ExerciseTask with(double other) {
        return new ExerciseTask(person, exercise, other, tempo, positions);
    }

    /** The same looked at from another number of positions. */
    public ExerciseTask lookedAtFrom(int otherPositions) {
        return new ExerciseTask(person, exercise, plates, tempo, otherPositions);
    }

    /**
     * The range that all limbs share: from the nearest of their bottoms to the nearest of their tops, so that no limb leaves its own.
     */
    public WorkingRange range() {
        WorkingRange shared = person.limbs().get(0).range();
        double sense = Math.signum(shared.top() - shared.bottom());
        for (Limb limb : person.limbs()) {
            requireSense(limb.range(), sense);
            shared = narrowed(shared, limb.range(), sense);
        }
        return shared;
    }

    private static void requireSense(WorkingRange range, double sense) {
        if ((range.top() - range.bottom()) * sense < 0) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "range of the other limb, from bottom to top",
                    range.top() - range.bottom(),
                    0,
                    "rad or m",
                    "the limbs' working ranges lift toward opposite ends: turn one round, or train them one at a time");
        }
    }

    private static WorkingRange narrowed(WorkingRange one, WorkingRange other, double sense) {
        double bottom = sense > 0 ? Math.max(one.bottom(), other.bottom()) : Math.min(one.bottom(), other.bottom());
        double top = sense > 0 ? Math.min(one.top(), other.top()) : Math.max(one.top(), other.top());
        if (!((top - bottom) * sense > 0)) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "range that both limbs share",
                    bottom,
                    top,
                    "rad or m",
                    "the limbs' working ranges have nothing in common: train them one at a time");
        }
        return new WorkingRange(bottom, top, bottom);
    }

    /** The same with another person. */
    public ExerciseTask with(Person other) {
        return new ExerciseTask(other, exercise, plates, tempo, positions);
    }

    /** The same movement against something else. */
    public ExerciseTask with(Exercise other) {
        return new ExerciseTask(person, other, plates, tempo, positions);
    }

    /** The same at another tempo. */
    public ExerciseTask with(Tempo other) {
        return new ExerciseTask(person, exercise, plates, other, positions);
    }
}
