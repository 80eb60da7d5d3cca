package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * The range a limb works over, as two values of its driving joint angle (knee flexion), rad.
 *
 * @param bottom knee flexion where the lift starts, rad, above {@code top}, below π
 * @param top knee flexion where it ends, rad, 0 (straight) or more
 * @param painFree the deepest knee flexion that does not hurt, rad; at least {@code bottom}
 */
public record WorkingRange(double bottom, double top, double painFree) {
    private static final Require.Limits KNEE = new Require.Limits(0, Math.PI * 0.95);

    public WorkingRange {
        Require.within(top, KNEE, "knee flexion at the top", "rad");
        Require.within(bottom, KNEE, "knee flexion at the bottom", "rad");
        Require.positive(bottom - top, "knee flexion from top to bottom", "rad");
        Require.within(painFree, new Require.Limits(bottom, Math.PI), "pain-free knee flexion", "rad");
    }
}
