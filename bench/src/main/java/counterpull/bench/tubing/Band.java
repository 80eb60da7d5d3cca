package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * Force of one strand against length with its 95 % interval, from natural length to the longest that was tested and never beyond.
 * Read-only.
 */
public final class Band {
    private static final int STEPS = 40;

    private final CurveFit curve;
    private final double first;
    private final double last;

    Band(CurveFit curve, double first, double last) {
        this.curve = curve;
        this.first = first;
        this.last = last;
    }

    /** Natural length, m. */
    public double first() {
        return first;
    }

    /** The longest length that was tested, m. */
    public double last() {
        return last;
    }

    /** Force of one strand at a length, N; a refusal past the longest that was tested. */
    public Estimate force(double length) {
        if (!(length <= last * (1 + 1e-12))) {
            throw new Refusal(
                    Fault.PAST_TESTED_LENGTH,
                    "length",
                    length,
                    last,
                    "m",
                    "nothing is known past the longest length that was tested");
        }
        return curve.force(length);
    }

    /** Equal steps of length from natural to longest, for a picture. */
    public List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double length = first + (last - first) * i / STEPS;
            points.add(new Point(length, curve.force(length)));
        }
        return points;
    }

    /**
     * One place on it.
     *
     * @param length m
     * @param force of one strand, N
     */
    public record Point(double length, Estimate force) {}
}
