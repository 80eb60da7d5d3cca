package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Why a press is hard when bent and a weight on the ankle when straight: 400 N through the hip of a leg with thigh and shank of 0.42 m each
 * asks F L sin(flexion/2) of the knee and nothing of the hip, and 100 N hung on a level thigh's shank F L cos(flexion).
 */
class PressAndExtensionShapeValidationTest {
    private static final double LENGTH = 0.42;
    private static final String SOURCE = "virtual work, closed form computed by hand; not published";

    @ParameterizedTest
    @CsvSource({"0, 0", "30, 43.4816", "60, 84", "90, 118.7939", "120, 145.4923"})
    void pressThroughTheHip(double flexion, double value) {
        double bend = Math.toRadians(flexion);
        ChainMotion motion = new ChainMotion(2);
        motion.direction(0, bend / 2);
        motion.direction(1, -bend / 2);
        PointLoads loads = new PointLoads(2);
        loads.add(1, motion.armX(1, LENGTH, 0), motion.armY(1, LENGTH, 0), -400, 0);
        double[] torque = torques(motion, loads);
        Published.of("knee torque of a press through the hip, " + flexion + "° of flexion", "N·m")
                .source(SOURCE)
                .value(value)
                .ours(torque[1])
                .within(0.000051, "given to four decimals");
        // the foot lies in line with the hip to 1e-16 m
        assertThat(torque[0]).as("hip").isCloseTo(0, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 42", "30, 36.3731", "60, 21", "90, 0"})
    void weightHungOnTheAnkle(double flexion, double value) {
        ChainMotion motion = new ChainMotion(2);
        motion.direction(1, -Math.toRadians(flexion));
        PointLoads loads = new PointLoads(2);
        loads.add(1, motion.armX(1, LENGTH, 0), motion.armY(1, LENGTH, 0), 0, -100);
        Published.of("knee torque of a weight on the ankle, " + flexion + "° of flexion", "N·m")
                .source(SOURCE)
                .value(value)
                .ours(torques(motion, loads)[1])
                .within(0.000051, "given to four decimals");
    }

    /** Without weight of their own. */
    private static double[] torques(ChainMotion motion, PointLoads loads) {
        Chain chain = Chain.build()
                .segment(LENGTH, 1, new Vec(0, 0), 0)
                .segment(LENGTH, 1, new Vec(0, 0), 0)
                .done();
        double[] torque = new double[2];
        new NewtonEuler(chain).torques(motion, loads, torque);
        return torque;
    }
}
