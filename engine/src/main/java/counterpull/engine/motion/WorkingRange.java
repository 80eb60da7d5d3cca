package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * The range a limb works over, as two values of its driving coordinate: a joint's anatomical angle, rad (knee flexion for a
 * press), or travel along a path, m. It may rise or fall from bottom to top.
 *
 * @param bottom where the lift starts
 * @param top where it ends, other than {@code bottom}
 * @param painFree how far the limb goes beyond the bottom without pain; {@code bottom} or farther from {@code top}
 */
public record WorkingRange(double bottom, double top, double painFree) {
    private static final Require.Limits ANY = new Require.Limits(-20, 20);
    private static final Require.Limits KNEE = new Require.Limits(0, Math.PI * 0.95);
    private static final double LEAST = 1e-6;

    public WorkingRange {
        Require.within(bottom, ANY, "bottom of the working range", "rad or m");
        Require.within(top, ANY, "top of the working range", "rad or m");
        if (Math.abs(top - bottom) < LEAST) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "working range",
                    bottom,
                    top,
                    "rad or m",
                    "the working range must have two different ends");
        }
        double beyond = (painFree - bottom) * Math.signum(bottom - top);
        Require.within(beyond, new Require.Limits(0, 20), "pain-free range beyond the bottom", "rad or m");
    }

    /** This range as knee flexion of a press, 0 = straight: refused where it does not fold toward the bottom. */
    public WorkingRange asKneeOfPress() {
        Require.within(top, KNEE, "knee flexion at the top", "rad");
        Require.within(bottom, KNEE, "knee flexion at the bottom", "rad");
        Require.positive(bottom - top, "knee flexion from top to bottom", "rad");
        return this;
    }
}
