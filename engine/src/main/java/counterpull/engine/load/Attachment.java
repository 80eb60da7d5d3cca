package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A hook on the end of the sled that rides. On a sled whose plate rides it is given from the plate point (where the sled's
 * reference line meets the plate's surface), where the seat rides from the hip; along <b>u</b> and <b>n</b>.
 *
 * @param name what the floor calls it ("top bar")
 * @param at place along and across the rail, m
 * @param lateral place to the side of the sled's middle plane, m; both sides of it for a matched pair
 */
public record Attachment(String name, Vec at, double lateral) {
    public Attachment {
        Require.finite(at.x(), "attachment's place along the rail", "m");
        Require.finite(at.y(), "attachment's place across the rail", "m");
        Require.finite(lateral, "attachment's place to the side", "m");
    }
}
