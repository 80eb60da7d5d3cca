package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.motion.Flowing;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The closed form of the acceleration at a flowing turn against a numerical minimum of the squared jerk of both strokes, on
 * polynomials solved from their end conditions; and its cap against the first stroke that goes back.
 */
class FlowingTurnCrosscheckTest {
    private static final int CASES = 300;

    /** A golden section of a parabola finds its bottom to the root of the rounding: 1e-7 of the acceleration. */
    private static final double FOUND = 1e-6;

    private record Strokes(double travel, double down, double up, Flowing.Turn turn) {
        static Strokes random(Random random) {
            return new Strokes(
                    0.1 + 0.5 * random.nextDouble(),
                    0.8 + 4 * random.nextDouble(),
                    0.8 + 4 * random.nextDouble(),
                    Flowing.Turn.values()[random.nextInt(3)]);
        }

        double engine() {
            return new Flowing(down, up, turn).turnAcceleration(travel);
        }

        // lowering is looked at from the bottom up: its mirror in time has the same accelerations
        PlainQuintic stroke(double seconds, double acceleration) {
            double bottom = turn == Flowing.Turn.TOP ? 0 : acceleration;
            double top = turn == Flowing.Turn.BOTTOM ? 0 : -acceleration;
            return new PlainQuintic(travel, seconds, bottom, top);
        }

        double squaredJerk(double acceleration) {
            return stroke(down, acceleration).squaredJerk()
                    + stroke(up, acceleration).squaredJerk();
        }

        boolean monotone(double acceleration, double slack) {
            return stroke(down, acceleration).monotone(slack)
                    && stroke(up, acceleration).monotone(slack);
        }
    }

    @Test
    void theSmoothestTurnOrTheLargestThatNeverGoesBack() {
        Random random = new Random(411);
        int capped = 0;
        for (int k = 0; k < CASES; k++) {
            Strokes strokes = Strokes.random(random);
            double ours = strokes.engine();
            double smoothest = least(strokes::squaredJerk, 60 * strokes.travel);
            if (smoothest > ours * (1 + FOUND)) {
                capped++;
                assertThat(strokes.monotone(ours, 1e-12))
                        .as("%s at its cap", strokes)
                        .isTrue();
                assertThat(strokes.monotone(1.02 * ours, 0))
                        .as("%s past its cap", strokes)
                        .isFalse();
            } else {
                assertThat(ours).as("%s", strokes).isCloseTo(smoothest, within(FOUND * smoothest));
                assertThat(strokes.monotone(ours, 1e-12)).as("%s", strokes).isTrue();
            }
        }
        assertThat(capped).as("cases that meet the cap").isBetween(20, CASES - 20);
    }

    /** A control: a turn one part in a thousand away from ours is not the smoothest. */
    @Test
    void aNearbyTurnIsLessSmooth() {
        Strokes strokes = new Strokes(0.4, 2, 2, Flowing.Turn.BOTTOM);
        double ours = strokes.engine();
        assertThat(strokes.squaredJerk(ours)).isLessThan(strokes.squaredJerk(1.001 * ours));
        assertThat(strokes.squaredJerk(ours)).isLessThan(strokes.squaredJerk(0.999 * ours));
    }

    private static double least(DoubleUnaryOperator function, double high) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = 0;
        double b = high;
        for (int i = 0; i < 100; i++) {
            double left = b - golden * (b - a);
            double right = a + golden * (b - a);
            if (function.applyAsDouble(left) < function.applyAsDouble(right)) {
                b = right;
            } else {
                a = left;
            }
        }
        // the bottom of a parabola is seen sharper from afar than from near: through three points around it
        double middle = (a + b) / 2;
        double step = 0.1 * high;
        double before = function.applyAsDouble(middle - step);
        double after = function.applyAsDouble(middle + step);
        double at = function.applyAsDouble(middle);
        return middle + step * (before - after) / (2 * (before - 2 * at + after));
    }
}
