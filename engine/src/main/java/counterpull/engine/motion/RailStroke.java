package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.List;

/**
 * The stretch of rail that all limbs share: from the hip-to-plate distance where the lift starts to the one where it ends.
 * It starts at the shallowest of the limbs' bottoms and ends at the nearest of their tops, so that no limb leaves its own
 * range; positions are equal steps of the driving angle of the limb that sets the bottom (ties: the left one).
 *
 * @param bottom hip-to-plate distance where the lift starts, m
 * @param top hip-to-plate distance where it ends, m, above {@code bottom}
 * @param reference index of the limb whose knee angle counts the positions
 */
public record RailStroke(double bottom, double top, int reference) {
    public RailStroke {
        if (!(top - bottom > 1e-6)) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "travel of the stroke",
                    top - bottom,
                    0,
                    "m",
                    "nothing is left of the range: the bottom (or its stop) lies past the top for this seat and foot row");
        }
    }

    /** The limbs' own ranges, before any stop. */
    public static RailStroke own(List<LegOnPlate> legs, List<WorkingRange> ranges) {
        double bottom = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        int reference = 0;
        for (int k = 0; k < legs.size(); k++) {
            double start = legs.get(k).plateAt(ranges.get(k).bottom());
            if (start > bottom) {
                bottom = start;
                reference = k;
            }
            top = Math.min(top, legs.get(k).plateAt(ranges.get(k).top()));
        }
        return new RailStroke(bottom, top, reference);
    }

    /** The same range starting at another bottom (a stop). */
    public RailStroke from(double newBottom) {
        return new RailStroke(newBottom, top, reference);
    }

    /** Travel, m. */
    public double travel() {
        return top - bottom;
    }

    /** Hip-to-plate distances at equal steps of the reference limb's knee angle, from bottom to top, m. */
    public double[] equalAngles(LegOnPlate leg, int positions) {
        double start = leg.kneeAt(bottom);
        double end = leg.kneeAt(top);
        double[] plate = new double[positions];
        for (int i = 0; i < positions; i++) {
            plate[i] = leg.plateAt(start + (end - start) * i / (positions - 1));
        }
        plate[0] = bottom;
        plate[positions - 1] = top;
        return plate;
    }
}
