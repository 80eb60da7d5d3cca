package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.motion.QuinticStroke;
import org.junit.jupiter.api.Test;

/** Peaks of a minimum-jerk stroke from rest to rest, found by walking through it. */
class MinimumJerkValidationTest {
    private static final String SOURCE =
            "Flash and Hogan 1985, J Neurosci 5:1688, minimum-jerk polynomial (from memory); peaks by differentiation";
    private static final double TRAVEL = 0.437;
    private static final double SECONDS = 1.7;
    private static final int STEPS = 100_000;

    @Test
    void peakSpeedAndAcceleration() {
        QuinticStroke stroke = new QuinticStroke(TRAVEL, SECONDS, 0, 0);
        double speed = 0;
        double acceleration = 0;
        for (int i = 0; i <= STEPS; i++) {
            double time = (double) i / STEPS;
            speed = Math.max(speed, stroke.speed(time));
            acceleration = Math.max(acceleration, stroke.acceleration(time));
        }
        String walked = "100,000 steps over a flat top err by far less";
        Published.of("peak speed in D/T", "")
                .source(SOURCE)
                .value(1.875)
                .ours(speed * SECONDS / TRAVEL)
                .within(1e-8, walked);
        Published.of("peak acceleration in D/T²", "")
                .source(SOURCE)
                .value(10 / Math.sqrt(3))
                .ours(acceleration * SECONDS * SECONDS / TRAVEL)
                .within(1e-8, walked);
        Published.of("peak acceleration near the bottom in D/T²", "")
                .source(SOURCE)
                .value(10 / Math.sqrt(3))
                .ours(stroke.peakNearBottom() * SECONDS * SECONDS / TRAVEL)
                .within(1e-12, "closed form, rounding alone");
    }

    @Test
    void theStrokeIsItsOwnMirrorImage() {
        QuinticStroke stroke = new QuinticStroke(TRAVEL, SECONDS, 0, 0);
        for (double time = 0; time <= 0.5; time += 0.05) {
            double both = stroke.position(time) + stroke.position(1 - time);
            assertThat(both).as("way at %s of the time and its mirror", time).isCloseTo(TRAVEL, within(1e-12));
        }
    }
}
