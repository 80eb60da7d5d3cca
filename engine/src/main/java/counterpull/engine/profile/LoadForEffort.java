package counterpull.engine.profile;

import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.motion.Phase;
import java.util.OptionalDouble;

/**
 * How much chosen weight brings the hardest place of an exercise to an effort: the largest mass whose largest known effort, over both
 * moving phases and all joints, is not above it.
 *
 * <p>Largest effort against chosen mass is convex where the posture does not depend on it (torques are affine, efforts their largest
 * size), so the masses that keep an effort are one stretch; its upper end is found by halving to a gram. A balanced stand leans with
 * what it carries; there the stretch that holds today's mass is followed.
 */
public final class LoadForEffort {
    private static final double HEAVIEST = 1000;
    private static final double GRAM = 1e-3;
    private static final int STEPS = 9;
    private final ExerciseTask task;

    private LoadForEffort(ExerciseTask task) {
        this.task = task;
    }

    /**
     * The mass, kg; empty where nothing takes chosen weight, where no effort is known, where even the best mass asks more, or where
     * nothing up to 1000 kg asks as much.
     *
     * @param task the exercise
     * @param effort a share of what the person has, above zero
     */
    public static OptionalDouble most(ExerciseTask task, double effort) {
        Require.positive(effort, "effort that a load is wanted for", "");
        return task.exercise().takesPlates() ? new LoadForEffort(task).most(effort) : OptionalDouble.empty();
    }

    private OptionalDouble most(double effort) {
        double low = keeping(effort);
        if (Double.isNaN(low) || largest(HEAVIEST) <= effort) {
            return OptionalDouble.empty();
        }
        double high = HEAVIEST;
        while (high - low > GRAM) {
            double middle = (low + high) / 2;
            // a mass that is refused (a pad that leaves, a stand that tips) is too much too
            if (largest(middle) <= effort) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(low);
    }

    /** A mass that keeps the effort: today's, else a lighter one; NaN where none of those tried does. */
    private double keeping(double effort) {
        for (int step = STEPS; step >= 0; step--) {
            double mass = task.plates() * step / STEPS;
            if (largest(mass) <= effort) {
                return mass;
            }
        }
        return Double.NaN;
    }

    /** Largest known effort with so much, kg; infinite where it is refused or nothing is known. */
    private double largest(double mass) {
        try {
            return largest(ExerciseProfile.of(task.with(mass)));
        } catch (Refusal refused) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private static double largest(ExerciseProfile profile) {
        double most = Double.NEGATIVE_INFINITY;
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 0; i < profile.positions(); i++) {
                most = Math.max(
                        most,
                        profile.limiting(profile.joints(), phase, i)
                                .map(Limiting::effort)
                                .orElse(Double.NEGATIVE_INFINITY));
            }
        }
        return most == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : most;
    }
}
