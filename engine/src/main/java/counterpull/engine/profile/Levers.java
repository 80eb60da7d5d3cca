package counterpull.engine.profile;

import counterpull.engine.body.Joint;

/**
 * What the contact force does at each joint: torque = own + F × lever, by limb, then phase × position × joint, for a push in a
 * fixed direction. Own in N·m, lever in m per newton of the whole contact force along the rail (the limb's share included), both
 * in the sense of the joint's named action. Read-only by agreement: the arrays are handed out for speed.
 *
 * <p>Not for a push of least effort, whose direction follows the force.
 */
public final class Levers {
    private static final int JOINTS = Joint.LEG.size();
    private final double[][] own;
    private final double[][] told;
    private final double[][] low;
    private final double[][] high;

    private Levers(int limbs) {
        own = new double[limbs][];
        told = new double[limbs][];
        low = new double[limbs][];
        high = new double[limbs][];
    }

    /** The levers of a task's push, and at both ends of the interval around it. */
    public static Levers of(Groundwork ground) {
        Terms terms = ground.terms();
        PushDirection direction =
                new PushDirection(ground, ground.task().pushing().push());
        double spread = ground.task().pushing().spread();
        Levers levers = new Levers(terms.limbs());
        double[] noForce = new double[terms.grid().cells()];
        for (int k = 0; k < terms.limbs(); k++) {
            double[] own = terms.own(k);
            double[] tangent = direction.tangents(k, own, noForce);
            levers.own[k] = own;
            levers.told[k] = lever(terms, k, tangent);
            levers.low[k] = lever(terms, k, turned(tangent, -spread));
            levers.high[k] = lever(terms, k, turned(tangent, spread));
        }
        return levers;
    }

    /** Whether a task's push keeps one direction whatever the load. */
    public static boolean fixed(PressTask task) {
        return !task.pushing().push().followsForce();
    }

    private static double[] turned(double[] tangent, double turn) {
        double[] turned = new double[tangent.length];
        for (int cell = 0; cell < turned.length; cell++) {
            turned[cell] = Math.tan(Math.atan(tangent[cell]) + turn);
        }
        return turned;
    }

    private static double[] lever(Terms terms, int limb, double[] tangent) {
        int n = terms.grid().positions();
        double[] lever = new double[terms.grid().jointCells()];
        for (int cell = 0; cell < tangent.length; cell++) {
            for (Joint joint : Joint.LEG) {
                lever[cell * JOINTS + joint.ordinal()] =
                        terms.armAlong(limb, joint, cell % n) + tangent[cell] * terms.armAcross(limb, joint, cell % n);
            }
        }
        return lever;
    }

    /** A limb's own torque, weight and inertia, N·m. */
    public double[] own(int limb) {
        return own[limb];
    }

    /** Lever for the push as told, m. */
    public double[] told(int limb) {
        return told[limb];
    }

    /** Lever at the lower end of the push interval, m. */
    public double[] low(int limb) {
        return low[limb];
    }

    /** Lever at the upper end of the push interval, m. */
    public double[] high(int limb) {
        return high[limb];
    }
}
