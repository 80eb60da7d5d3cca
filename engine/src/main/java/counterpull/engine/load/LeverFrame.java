package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.planar.Vec;

/**
 * Where a lever turns and how it touches the limb. A lever or cam whose axle lies on the joint has its pivot at (0, 0).
 *
 * @param pivot of the lever, from the joint at the fixed end of the chain, in the plane's axes (x forward, y up), m, within 3 m
 * @param contact pad or cuff
 */
public record LeverFrame(Vec pivot, Contact contact) implements Carrier {
    private static final Require.Limits NEAR = new Require.Limits(-3, 3);
    private static final double ROUNDING = 1e-9;

    public LeverFrame {
        Require.within(pivot.x(), NEAR, "place of the lever's pivot, forward of the joint", "m");
        Require.within(pivot.y(), NEAR, "place of the lever's pivot, above the joint", "m");
    }

    @Override
    public String words() {
        return contact.words();
    }

    @Override
    public boolean isSame(Carrier other) {
        return other instanceof LeverFrame lever
                && lever.contact.equals(contact)
                && lever.pivot.minus(pivot).norm() < ROUNDING;
    }

    @Override
    public LeverPath over(ChainPath path) {
        return new LeverPath(this, path);
    }
}
