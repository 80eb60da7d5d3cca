package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import java.util.OptionalDouble;

/**
 * How much longer the piece stayed: after/before − 1. One tape and one pair of eyes read both, so that repeats of both together say how
 * far one reading scatters (pooled, n₁ + n₂ − 2 degrees of freedom). Source: propagation of uncertainty, JCGM 100:2008, 5.1.2.
 */
final class PermanentSet {
    private PermanentSet() {}

    static Estimate of(TapeReadings before, TapeReadings after, OptionalDouble tape) {
        if (before.beyond(tape) || after.beyond(tape)) {
            return of(before, after, OptionalDouble.empty());
        }
        double one = before.mean();
        double other = after.mean();
        double ratio = other / one;
        if (tape.isEmpty() && before.saysItself() && after.saysItself()) {
            int left = before.readings().size() + after.readings().size() - 2;
            double squares = squares(before) + squares(after);
            double reading = Math.sqrt(squares / left);
            double a = reading / Math.sqrt(after.readings().size());
            double b = reading * ratio / Math.sqrt(before.readings().size());
            return Estimate.student(ratio - 1, Math.hypot(a, b) / one, left);
        }
        double error = Math.hypot(after.standardError(tape), ratio * before.standardError(tape)) / one;
        double freedom = Math.min(before.degreesOfFreedom(tape), after.degreesOfFreedom(tape));
        return Estimate.student(ratio - 1, error, freedom);
    }

    private static double squares(TapeReadings tape) {
        return tape.scatter() * tape.scatter() * (tape.readings().size() - 1);
    }
}
