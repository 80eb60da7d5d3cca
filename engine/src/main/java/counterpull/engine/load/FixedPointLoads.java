package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * What each fixed point carries: the vector sum of all lines that end on it, N. A matched pair on points at the sides hangs half on each; on
 * one point in the middle both halves hang together and their sideways pulls cancel.
 *
 * @param point the fixed point
 * @param most the largest load over the range and all phases, N
 * @param position where that is
 */
public record FixedPointLoads(FixedPoint point, double most, int position) {
    private static final double ROUNDING = 1e-9;

    /** The loads of all fixed points in use. */
    public static List<FixedPointLoads> of(List<StretchSeries> lines, int positions) {
        List<FixedPoint> points = new ArrayList<>();
        for (StretchSeries line : lines) {
            for (LineEnd end : List.of(line.line().from(), line.line().to())) {
                if (end instanceof FixedPoint point && !points.contains(point)) {
                    points.add(point);
                }
            }
        }
        List<FixedPointLoads> loads = new ArrayList<>();
        points.forEach(point -> loads.add(most(point, lines, positions)));
        return loads;
    }

    /** Refuses a load that passes the point's rating, by more than rounding; {@code where} says a position in words. */
    public void withinRating(IntFunction<String> where) {
        if (most > point.rating() * (1 + ROUNDING)) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "load on the " + point.name() + " " + where.apply(position),
                    most,
                    point.rating(),
                    "N",
                    "the " + point.name() + " would carry more than it is rated for " + where.apply(position)
                            + ": use another hook, less rubber or a shorter range");
        }
    }

    private static FixedPointLoads most(FixedPoint point, List<StretchSeries> lines, int positions) {
        double most = -1;
        int where = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < positions; i++) {
                double load = at(point, lines, phase, i);
                if (load > most) {
                    most = load;
                    where = i;
                }
            }
        }
        return new FixedPointLoads(point, most, where);
    }

    private static double at(FixedPoint point, List<StretchSeries> lines, Phase phase, int i) {
        double[] sum = new double[3];
        for (StretchSeries line : lines) {
            double[] more = line.on(point, phase, i);
            for (int axis = 0; axis < sum.length; axis++) {
                sum[axis] += more[axis];
            }
        }
        return Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
    }
}
