package counterpull.engine.uncertainty;

import counterpull.engine.load.Knob;
import counterpull.engine.load.Resistance;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseTask;
import java.util.ArrayList;
import java.util.List;

/** What about the things that resist in an exercise is known only so far: the chosen weight, and each thing's own {@link Knob}s. */
final class ResistDoubts {
    private static final double LEAST_FACTOR = 0.01;

    private ResistDoubts() {}

    static List<Doubt<ExerciseTrial>> of(ExerciseTrial trial, Stated stated) {
        List<Doubt<ExerciseTrial>> found = new ArrayList<>();
        if (trial.task().plates() > 0) {
            Stated.Known known = stated.known(Input.PLATES);
            found.add(Doubt.of(
                    "the chosen weight",
                    new Spread(Spread.Kind.SHARE, known.sd()),
                    known.source(),
                    (before, by) -> before.with(
                            before.task().with(Math.max(0, before.task().plates() * (1 + by)))),
                    Again.Reading.once("weigh what was chosen")));
        }
        List<Resistance> resists = trial.task().exercise().resists();
        for (int k = 0; k < resists.size(); k++) {
            for (int knob = 0; knob < resists.get(k).knobs().size(); knob++) {
                found.add(turned(resists.get(k).knobs().get(knob), k, knob, stated));
            }
        }
        return found;
    }

    private static Doubt<ExerciseTrial> turned(Knob knob, int resistance, int which, Stated stated) {
        Input input = input(knob.kind());
        Stated.Known known = stated.known(input);
        return Doubt.of(
                knob.words(),
                new Spread(input.kind(), known.sd()),
                known.source(),
                (before, by) -> turned(before, resistance, which, by),
                again(knob, known.sd()));
    }

    private static Again again(Knob knob, double sd) {
        return knob.kind() == Knob.Kind.RUBBER_PULL
                ? LineDoubts.pullAgain("read the " + knob.words() + " once more where it pulls hardest", sd)
                : Again.Reading.once("measure the " + knob.words() + " once more");
    }

    private static Input input(Knob.Kind kind) {
        return switch (kind) {
            case MASS -> Input.MASSES;
            case READINGS -> Input.READINGS;
            case LINE_FRICTION -> Input.LINE_FRICTION;
            case CONSTANT_FRICTION -> Input.FRICTION_CONSTANT;
            case FRICTION_COEFFICIENT -> Input.FRICTION_COEFFICIENT;
            case RUBBER_PULL -> Input.RUBBER_PULL;
            case RUBBER_LENGTH -> Input.RUBBER_LENGTH;
        };
    }

    private static ExerciseTrial turned(ExerciseTrial before, int resistance, int which, double by) {
        ExerciseTask task = before.task();
        List<Resistance> changed = new ArrayList<>(task.exercise().resists());
        Knob knob = changed.get(resistance).knobs().get(which);
        boolean factor = knob.kind().neutral() == 1;
        changed.set(resistance, knob.turned().apply(factor ? Math.max(LEAST_FACTOR, 1 + by) : by));
        return before.with(task.with(
                new Exercise(task.exercise().motion(), changed, task.exercise().borne())));
    }
}
