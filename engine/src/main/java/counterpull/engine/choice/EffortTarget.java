package counterpull.engine.choice;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * The effort a professional wants along the range: through points of knee flexion, straight between them, level beyond the
 * first and the last. Effort is a share of what this person has: 0.7 means 70 %.
 */
public final class EffortTarget {
    private static final Require.Limits EFFORT = new Require.Limits(0, 2);
    private final double[] angle;
    private final double[] effort;

    private EffortTarget(double[] angle, double[] effort) {
        this.angle = angle;
        this.effort = effort;
    }

    /** The same effort everywhere, 0 to 2. */
    public static EffortTarget flat(double effort) {
        return through(new double[] {0}, new double[] {effort});
    }

    /**
     * A drawn target.
     *
     * @param kneeFlexion rad, rising
     * @param effort one for each, 0 to 2
     */
    public static EffortTarget through(double[] kneeFlexion, double[] effort) {
        Require.positive(kneeFlexion.length, "points of the target", "");
        Require.within(effort.length, new Require.Limits(kneeFlexion.length, kneeFlexion.length), "efforts", "");
        for (int i = 0; i < effort.length; i++) {
            Require.within(effort[i], EFFORT, "target effort", "");
            Require.finite(kneeFlexion[i], "knee flexion of a target point", "rad");
            if (i > 0 && kneeFlexion[i] <= kneeFlexion[i - 1]) {
                throw new Refusal(
                        Fault.OUTSIDE_LIMITS,
                        "knee flexion of target point " + (i + 1),
                        kneeFlexion[i],
                        kneeFlexion[i - 1],
                        "rad",
                        "the points of a drawn target must rise in knee flexion");
            }
        }
        return new EffortTarget(kneeFlexion.clone(), effort.clone());
    }

    /** Target effort at a knee flexion, rad. */
    public double at(double kneeFlexion) {
        int last = angle.length - 1;
        if (kneeFlexion <= angle[0]) {
            return effort[0];
        }
        if (kneeFlexion >= angle[last]) {
            return effort[last];
        }
        int i = 1;
        while (angle[i] < kneeFlexion) {
            i++;
        }
        double part = (kneeFlexion - angle[i - 1]) / (angle[i] - angle[i - 1]);
        return effort[i - 1] + part * (effort[i] - effort[i - 1]);
    }

    /** The points' knee flexions, rad. */
    public double[] angles() {
        return angle.clone();
    }

    /** The points' efforts. */
    public double[] efforts() {
        return effort.clone();
    }
}
