package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A point fixed on one segment of a limb's chain, where something may weigh or pull.
 *
 * @param name as a person says it ("wrist", "shank, 35 cm below the knee")
 * @param segment index of the segment in the chain, the one at the fixed end first
 * @param at along the segment from its joint, and across it (positive to the left of its direction), m
 */
public record BodyPoint(String name, int segment, Vec at) {
    private static final Require.Limits SEGMENTS = new Require.Limits(0, 15);
    private static final Require.Limits NEAR = new Require.Limits(-3, 3);

    public BodyPoint {
        Require.within(segment, SEGMENTS, "segment of " + name, "");
        Require.within(at.x(), NEAR, "place of " + name + " along its segment", "m");
        Require.within(at.y(), NEAR, "place of " + name + " across its segment", "m");
    }
}
