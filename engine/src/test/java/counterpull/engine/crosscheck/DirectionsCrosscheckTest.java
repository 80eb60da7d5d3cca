package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Derivatives of the segments' directions by travel or angle, against differences of the directions themselves. */
class DirectionsCrosscheckTest {
    private static final int MIDDLE = Stencil.REACH;

    // a path is smooth over centimetres, a joint's angle over tenths of a radian: what is cut off is (step/that)⁸,
    // below 1e-10;
    // rounding adds 1e-16/step² = 1e-10 of an angle to a second derivative
    private static void compare(RandomMovement.Drawn drawn, double fraction, double step) {
        double middle = drawn.range().bottom()
                + fraction * (drawn.range().top() - drawn.range().bottom());
        double up = Math.signum(drawn.range().top() - drawn.range().bottom()) * MIDDLE * step;
        WorkingRange around = new WorkingRange(middle - up, middle + up, middle - up);
        ChainPath path = drawn.path(around, 2 * MIDDLE + 1);
        for (int k = 0; k < path.segments(); k++) {
            int segment = k;
            IntToDoubleFunction direction = i -> path.direction(segment, i);
            double first = Stencil.first(x -> at(direction, x, step), 0, step);
            double second = Stencil.second(x -> at(direction, x, step), 0, step);
            assertThat(path.slope(k, MIDDLE))
                    .as("%s, segment %d", drawn.motion(), k)
                    .isCloseTo(first, within(1e-8 * (1 + Math.abs(first))));
            assertThat(path.curve(k, MIDDLE))
                    .as("%s, segment %d", drawn.motion(), k)
                    .isCloseTo(second, within(1e-8 * (1 + Math.abs(second) + first * first)));
        }
        speeds(path, step);
    }

    private static double at(IntToDoubleFunction direction, double x, double step) {
        return direction.applyAsDouble(MIDDLE + (int) Math.round(x / step));
    }

    private static void speeds(ChainPath path, double step) {
        for (Joint joint : path.joints()) {
            // angles are wrapped: a whole turn is no jump
            IntToDoubleFunction moved = i -> Angles.wrap(path.angle(joint, i) - path.angle(joint, MIDDLE));
            double perX = Stencil.first(x -> at(moved, x, step), 0, step);
            for (Phase phase : Phase.values()) {
                double speed = joint.angleSenseOfAction() * perX * path.course().speed(phase, MIDDLE);
                assertThat(path.actionSpeed(joint, phase, MIDDLE))
                        .as("%s %s", joint, phase)
                        .isCloseTo(speed, within(1e-8 * (1 + Math.abs(speed))));
            }
        }
    }

    @Test
    void straightPaths() {
        RandomMovement random = new RandomMovement(2001);
        for (int trial = 0; trial < 400; trial++) {
            compare(random.straight(), random.between(0.1, 0.9), 1e-3);
        }
        assertThat(random.refusedShare()).isLessThan(0.9);
    }

    @Test
    void balancedStands() {
        RandomMovement random = new RandomMovement(2002);
        for (int trial = 0; trial < 400; trial++) {
            compare(random.stand(), random.between(0.1, 0.9), 5e-3);
        }
        assertThat(random.refusedShare()).isLessThan(0.9);
    }

    @ParameterizedTest
    @EnumSource(Joint.class)
    void hinges(Joint joint) {
        RandomMovement random = new RandomMovement(2003);
        for (int trial = 0; trial < 20; trial++) {
            compare(random.hinge(joint), random.between(0.1, 0.9), 1e-2);
        }
    }
}
