package counterpull.engine.uncertainty;

import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;

/**
 * A trial with everything about it that is known only so far, each independent of the others, and what is not varied at all. Immutable.
 *
 * @param <T> what is computed
 */
public final class Doubts<T extends Trial<T>> {
    private final T nominal;
    private final List<Doubt<T>> all;
    private final int[] from;
    private final List<String> notVaried;

    private Doubts(T nominal, List<Doubt<T>> all, List<String> notVaried) {
        this.nominal = nominal;
        this.all = List.copyOf(all);
        this.notVaried = List.copyOf(notVaried);
        from = new int[all.size() + 1];
        for (int k = 0; k < all.size(); k++) {
            from[k + 1] = from[k] + all.get(k).dimensions();
        }
    }

    /**
     * About a trial.
     *
     * @param nominal as everything was measured
     * @param all what is known only so far; what is certain is left out
     * @param notVaried what else there is, in words
     */
    public static <T extends Trial<T>> Doubts<T> of(T nominal, List<Doubt<T>> all, List<String> notVaried) {
        List<Doubt<T>> real = new ArrayList<>();
        for (Doubt<T> doubt : all) {
            if (!doubt.isCertain()) {
                real.add(doubt);
            }
        }
        return new Doubts<>(nominal, real, notVaried);
    }

    /** About a press, as it is done today. */
    public static Doubts<PressTrial> of(PressTask task, Stated stated) {
        return of(PressTrial.of(task), stated);
    }

    /** About a press whose stop's mark is held already. */
    public static Doubts<PressTrial> of(PressTrial trial, Stated stated) {
        List<Doubt<PressTrial>> all = new ArrayList<>(PersonDoubts.of(trial, stated));
        all.addAll(SledDoubts.of(trial, stated));
        all.addAll(LineDoubts.of(trial, stated));
        return of(trial, all, NotVaried.ofPress());
    }

    /** About any other exercise, as it is done today. */
    public static Doubts<ExerciseTrial> of(ExerciseTask task, Stated stated) {
        ExerciseTrial trial = ExerciseTrial.of(task);
        List<Doubt<ExerciseTrial>> all = new ArrayList<>(PersonDoubts.of(trial, stated));
        all.addAll(ResistDoubts.of(trial, stated));
        return of(trial, all, NotVaried.ofExercise());
    }

    /** As everything was measured. */
    public T nominal() {
        return nominal;
    }

    /** What is known only so far. */
    public List<Doubt<T>> all() {
        return all;
    }

    /** What is not varied, in words. */
    public List<String> notVaried() {
        return notVaried;
    }

    /** How many independent standard normal numbers one draw takes. */
    public int dimensions() {
        return from[all.size()];
    }

    /** The trial as one draw has it; refused where a changed input is none that can be. */
    public T drawn(double[] z) {
        T trial = nominal;
        for (int k = 0; k < from.length - 1; k++) {
            trial = all.get(k).change().of(trial, z, from[k]);
        }
        return trial;
    }
}
