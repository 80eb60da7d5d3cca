package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.profile.ExerciseProfile;
import org.junit.jupiter.api.Test;

/** Torques of random exercises against energies alone. */
class ExercisePowerCrosscheckTest {
    /** The stencil's own error is below 1e-10 of the largest power; what is left is rounding of differences. */
    private static final double TOLERANCE = 1e-8;

    @Test
    void musclesPutInWhatSegmentsAndLoadsTakeUp() {
        RandomExercise random = new RandomExercise(11);
        int compared = 0;
        for (int trial = 0; trial < 60; trial++) {
            compared += ExercisePower.check(ExerciseProfile.of(random.next()), TOLERANCE, i -> false);
        }
        assertThat(compared).isGreaterThan(60 * 300);
    }
}
