package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * An end of a line that does not move: a hook, a post, a door.
 *
 * @param name what the floor calls it ("upper hook")
 * @param at from the joint at the fixed end of the chain, in the plane's axes, m
 * @param lateral place to the side of the plane, m
 * @param rating what one such point may carry, N, above zero; infinite where not stated
 */
public record FixedPoint(String name, Vec at, double lateral, double rating) implements LineEnd {
    private static final Require.Limits ROOM = new Require.Limits(-10, 10);

    public FixedPoint {
        Require.within(at.x(), ROOM, "place of the " + name + ", forward", "m");
        Require.within(at.y(), ROOM, "place of the " + name + ", up", "m");
        Require.within(lateral, ROOM, "place of the " + name + ", to the side", "m");
        if (rating != Double.POSITIVE_INFINITY) {
            Require.positive(rating, "rating of the " + name, "N");
        }
    }

    @Override
    public boolean moves() {
        return false;
    }

    @Override
    public boolean twists() {
        return false;
    }

    @Override
    public PointTrack track(ChainPath path) {
        return PointTrack.fixed(at, path.positions());
    }

    @Override
    public List<Pull> pulls(ChainPath path, Tug tug) {
        return List.of();
    }
}
