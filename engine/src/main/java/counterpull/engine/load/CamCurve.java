package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.MonotoneCubic;
import java.util.List;
import java.util.Optional;

/** A cam's radius, its slope and the line it has drawn in, by the lever's angle; refused past the readings. */
final class CamCurve {
    private static final double TURN = 2 * Math.PI;
    private static final double ROUNDING = 1e-9;

    private final double first;
    private final double last;
    private final double round;
    private final Optional<MonotoneCubic> curve;

    CamCurve(CamRadius cam) {
        List<CamRadius.Reading> readings = cam.readings();
        double[] angles = new double[readings.size()];
        double[] radii = new double[readings.size()];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = readings.get(i).angle();
            radii[i] = readings.get(i).radius();
        }
        first = angles[0];
        last = angles[angles.length - 1];
        round = radii[0];
        curve = angles.length == 1 ? Optional.empty() : Optional.of(new MonotoneCubic(angles, radii));
    }

    /** Radius, m. */
    double radius(double angle) {
        return curve.isEmpty() ? round : curve.get().value(inside(angle));
    }

    /** d(radius)/d(angle), m/rad. */
    double slope(double angle) {
        return curve.isEmpty() ? 0 : curve.get().slope(inside(angle));
    }

    /** ∫ radius d(angle) from the first reading (of a round cam: from 0), m. */
    double drawn(double angle) {
        return curve.isEmpty() ? round * angle : curve.get().integral(inside(angle));
    }

    /** The same direction of the lever, counted as the readings count. */
    private double inside(double angle) {
        double middle = (first + last) / 2;
        double counted = angle + TURN * Math.rint((middle - angle) / TURN);
        if (counted < first - ROUNDING || counted > last + ROUNDING) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "lever angle, in what the cam was measured for (measure it farther, or shorten the range),",
                    counted,
                    counted < first ? first : last,
                    "rad",
                    "the lever leaves the angles at which the cam's radius was measured: measure farther, or shorten the range");
        }
        return Math.max(first, Math.min(last, counted));
    }
}
