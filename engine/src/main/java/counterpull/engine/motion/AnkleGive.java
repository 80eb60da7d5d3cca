package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.planar.Angles;

/**
 * How dorsiflexion follows the knee with the foot flat: min(limit, ratio × knee flexion k), the corner rounded within w = 2° of knee
 * flexion so that its second derivative is continuous: with x = (k − limit/ratio)/w, |x| &lt; 1: ratio·(k − w((2x + 1.5x² − x⁴/4)/4 +
 * 3/16)). Ours, no source; the ratio is measured, 0.3 where it is not (from memory).
 *
 * @param ratio dorsiflexion per knee flexion, 0 to 1
 * @param limit the most the ankle gives, rad, above zero; infinite where not stated
 */
public record AnkleGive(double ratio, double limit) {
    /** Used where a person did not measure it; from memory. */
    public static final double USUAL_RATIO = 0.3;

    private static final double HALF_WIDTH = Angles.radians(2);
    private static final Require.Limits RATIO = new Require.Limits(0, 1);

    public AnkleGive {
        Require.within(ratio, RATIO, "dorsiflexion per knee flexion", "");
        if (limit != Double.POSITIVE_INFINITY) {
            Require.positive(limit, "most dorsiflexion", "rad");
        }
    }

    /** In proportion to the knee, without a limit. */
    public static AnkleGive inProportion(double ratio) {
        return new AnkleGive(ratio, Double.POSITIVE_INFINITY);
    }

    /** Knee flexion at which the ankle gives no further, rad; infinite where no limit is stated. */
    public double usedUpAt() {
        return limit / ratio;
    }

    /** Dorsiflexion at a knee flexion, rad, with derivatives by it. */
    Jet dorsiflexion(double knee) {
        double x = ratio == 0 ? -1 : (knee - limit / ratio) / HALF_WIDTH;
        if (x <= -1) {
            return Jet.line(0, ratio, knee);
        }
        return x >= 1 ? Jet.constant(limit) : corner(knee, x);
    }

    private Jet corner(double knee, double x) {
        double square = x * x;
        double off = (2 * x + 1.5 * square - square * square / 4) / 4 + 3.0 / 16;
        return new Jet(
                ratio * (knee - HALF_WIDTH * off),
                ratio * (1 - (2 + 3 * x - x * square) / 4),
                -ratio * 3 * (1 - square) / (4 * HALF_WIDTH));
    }
}
