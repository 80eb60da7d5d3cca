package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.motion.QuinticStroke;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much more than its weight a free mass asks for while it is lifted 0.5 m from rest to rest: with an acceleration that is a sine of
 * time, with one that is constant and then its reverse, and with the engine's own minimum-jerk stroke between the two.
 */
class LiftMomentumValidationTest {
    private static final double TRAVEL = 0.5;
    private static final double MASS = 20;
    private static final double G = 9.81;
    private static final int STEPS = 10_000;
    private static final String SOURCE = "closed form, 2πD/T² and 4D/T², computed by hand; not published";

    private final NewtonEuler pass =
            new NewtonEuler(Chain.build().segment(1, MASS, new Vec(0, 0), 0).done()).gravity(0, -G);

    /** Force that lifts the mass, N. */
    private double force(double acceleration) {
        ChainMotion motion = new ChainMotion(1);
        motion.base(0, acceleration);
        pass.torques(motion, new PointLoads(1), new double[1]);
        return pass.baseForceY();
    }

    @ParameterizedTest
    @CsvSource({"1, 3.142, 0.32", "2, 0.785, 0.08", "4, 0.196, 0.02"})
    void sineOfTime(double seconds, double peak, double share) {
        double most = 2 * Math.PI * TRAVEL / (seconds * seconds);
        double top = 0;
        double speed = 0;
        double way = 0;
        for (int i = 0; i < STEPS; i++) {
            // the middle of each step; the mass is weighed, and its motion summed from the force alone
            double lifting = force(most * Math.sin(2 * Math.PI * (i + 0.5) / STEPS));
            top = Math.max(top, lifting);
            speed += (lifting / MASS - G) * seconds / STEPS;
            way += speed * seconds / STEPS;
        }
        assertThat(way).as("the mass is lifted all the way").isCloseTo(TRAVEL, within(1e-6));
        assertThat(speed).as("and stands").isCloseTo(0, within(1e-9));
        check("sine of time, " + seconds + " s", peak, top / MASS - G, 0.00051);
        Published.of("peak over weight, sine of time, " + seconds + " s", "")
                .source(SOURCE)
                .value(share)
                .ours(top / (MASS * G) - 1)
                .within(0.0051, "printed to whole per cent");
    }

    @ParameterizedTest
    @CsvSource({"1, 2.0", "2, 0.5", "4, 0.125"})
    void constantAndItsReverse(double seconds, double peak) {
        double half = seconds / 2;
        double acceleration = force(TRAVEL / (half * half)) / MASS - G;
        check("constant, then its reverse, " + seconds + " s", peak, acceleration, 1e-9);
    }

    @Test
    void minimumJerkLiesBetween() {
        double peak = 0;
        QuinticStroke stroke = new QuinticStroke(TRAVEL, 1, 0, 0);
        for (int i = 0; i <= STEPS; i++) {
            peak = Math.max(peak, force(stroke.acceleration((double) i / STEPS)) / MASS - G);
        }
        assertThat(peak).isBetween(4 * TRAVEL, 2 * Math.PI * TRAVEL);
    }

    private static void check(String motion, double value, double ours, double tolerance) {
        Published.of("peak acceleration over 0.5 m, " + motion, "m/s²")
                .source(SOURCE)
                .value(value)
                .ours(ours)
                .within(tolerance, tolerance > 1e-6 ? "printed to three decimals" : "exact");
    }
}
