package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A fixed post, eye or pulley over which an elastic line runs; its own radius is left out.
 *
 * @param name what the floor calls it
 * @param at from the joint at the fixed end of the chain, in the plane's axes, m
 * @param lateral place to the side of the plane, m
 * @param loss share of the pull that it takes against the line's running, 0 to 0.9: the pull beyond it is (1 + loss) of the pull before
 *     it where the line runs out over it, (1 − loss) where it runs back, all of it held; 0 where not stated
 */
public record Guide(String name, Vec at, double lateral, double loss) {
    private static final Require.Limits ROOM = new Require.Limits(-10, 10);

    public Guide {
        Require.within(at.x(), ROOM, "place of the " + name + ", forward", "m");
        Require.within(at.y(), ROOM, "place of the " + name + ", up", "m");
        Require.within(lateral, ROOM, "place of the " + name + ", to the side", "m");
        Require.within(loss, new Require.Limits(0, 0.9), "friction of the " + name + " (share of the pull)", "");
    }
}
