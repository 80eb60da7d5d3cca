package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.planar.Angles;

/**
 * Which way a person pushes on the plate, and how far from it they may stray. The rails carry whatever is square to them,
 * so the load does not determine it.
 *
 * @param push the way of pushing
 * @param spread half the interval over which the answer is looked at again, rad, 0 to 25°
 */
public record Pushing(Push push, double spread) {
    /** Half interval unless stated: 10°, our assumption. */
    public static final double USUAL_SPREAD = Angles.radians(10);

    private static final Require.Limits SPREAD = new Require.Limits(0, Angles.radians(25));

    public Pushing {
        Require.within(spread, SPREAD, "interval of the push direction", "rad");
    }

    /** Straight along the rail, give or take 10°. */
    public static Pushing straight() {
        return new Pushing(new Push.Angled(0), USUAL_SPREAD);
    }
}
