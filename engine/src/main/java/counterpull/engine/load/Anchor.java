package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A hole, hook or post on the end of the sled that does not ride. On a sled whose plate rides it is given from the tape
 * mark's origin, where the seat rides from the plate point; along <b>u</b> and <b>n</b>.
 *
 * @param name what the floor calls it ("upper hole 3")
 * @param at place along and across the rail, m
 * @param lateral place to the side of the sled's middle plane, m; both sides of it for a matched pair
 * @param rating what one such anchor may carry, N, above zero; infinite where not stated
 */
public record Anchor(String name, Vec at, double lateral, double rating) {
    public Anchor {
        Require.finite(at.x(), "anchor's place along the rail", "m");
        Require.finite(at.y(), "anchor's place across the rail", "m");
        Require.finite(lateral, "anchor's place to the side", "m");
        if (rating != Double.POSITIVE_INFINITY) {
            Require.positive(rating, "anchor rating", "N");
        }
    }
}
