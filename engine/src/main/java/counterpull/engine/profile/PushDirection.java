package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;

/**
 * The tangent of the push angle of each limb at each phase and position. Three of the four ways of pushing fix it by
 * geometry; the least effort depends on the force itself.
 *
 * <p>Least effort: every torque is b + c t in t = tan α, so Σ (torque/strength)² is convex with a piecewise linear slope that
 * bends only where a torque changes sense; the zero of that slope is found exactly. A sense whose strength is not known at that
 * angle and speed adds nothing, which leaves the sum convex: it is 0 where the sense changes and rises on the known side alone.
 */
final class PushDirection {
    private static final int JOINTS = Joint.LEG.size();
    private static final int NO_JOINT = -1;
    private static final double FARTHEST_AIM = Math.tan(Angles.radians(60));
    private final Groundwork ground;
    private final Push push;
    private final double turn;
    private final double[] torque = new double[JOINTS];
    private final double[] perTangent = new double[JOINTS];

    PushDirection(Groundwork ground, Push push) {
        this.ground = ground;
        this.push = push instanceof Push.Turned turned ? turned.meant() : push;
        turn = push instanceof Push.Turned turned ? turned.by() : 0;
    }

    /** Refuses a push through a point that lies too far off the rail somewhere in the range; no load changes that. */
    void refuseUnreachableAim() {
        if (push instanceof Push.Through through) {
            for (int limb = 0; limb < ground.terms().limbs(); limb++) {
                for (int i = 0; i < ground.motion().positions(); i++) {
                    aimed(limb, i, through.point());
                }
            }
        }
    }

    /**
     * The tangents for one limb, by phase × position.
     *
     * @param limb which limb
     * @param straight its torques with the push straight along the rail, N·m
     * @param force the contact force along the rail, N
     */
    double[] tangents(int limb, double[] straight, double[] force) {
        Grid grid = ground.terms().grid();
        double[] tangent = new double[grid.cells()];
        if (push instanceof Push.Angled angled) {
            java.util.Arrays.fill(tangent, Math.tan(angled.angle()));
            return tangent;
        }
        for (int cell = 0; cell < tangent.length; cell++) {
            tangent[cell] = missed(tangent(limb, cell, straight, force[cell]));
        }
        return tangent;
    }

    private double missed(double tangent) {
        return turn == 0 ? tangent : Math.tan(Math.atan(tangent) + turn);
    }

    private double tangent(int limb, int cell, double[] straight, double force) {
        int position = cell % ground.motion().positions();
        if (push instanceof Push.Through through) {
            return aimed(limb, position, through.point());
        }
        Push.LeastEffort least = (Push.LeastEffort) push;
        for (Joint joint : Joint.LEG) {
            int j = joint.ordinal();
            torque[j] = straight[cell * JOINTS + j];
            perTangent[j] = force * ground.terms().armAcross(limb, joint, position);
        }
        return leastEffort(limb, cell, Math.tan(least.lowest()), Math.tan(least.highest()));
    }

    private double aimed(int limb, int position, Push.BodyPoint point) {
        Joint joint = point == Push.BodyPoint.HIP ? Joint.HIP : Joint.KNEE;
        Vec way = ground.terms().pressureFrom(limb, joint, position);
        double tangent = way.y() / way.x();
        if (!(way.x() > 0) || Math.abs(tangent) > FARTHEST_AIM) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "push angle through the " + point.words(),
                    Math.atan2(way.y(), way.x()),
                    Math.atan(FARTHEST_AIM),
                    "rad",
                    "a push through the " + point.words() + " would stand more than 60° off the rail: state an angle");
        }
        return tangent;
    }

    // where a whole interval takes least effort (a strength that is not known asks nothing), the angle nearest to
    // straight
    private double leastEffort(int limb, int cell, double low, double high) {
        double start = Math.min(high, Math.max(low, 0));
        double slope = slope(limb, cell, start, NO_JOINT);
        if (slope == 0) {
            return start;
        }
        return zeroOfSlope(limb, cell, start, slope < 0 ? high : low);
    }

    private double zeroOfSlope(int limb, int cell, double start, double limit) {
        double near = start;
        double far = limit;
        double slopeNear = slope(limb, cell, near, NO_JOINT);
        double slopeFar = slope(limb, cell, far, NO_JOINT);
        if (sameSense(slopeNear, slopeFar)) {
            return far;
        }
        for (int j = 0; j < JOINTS; j++) {
            double bend = -torque[j] / perTangent[j];
            if ((bend - near) * (bend - far) < 0) {
                double slope = slope(limb, cell, bend, j);
                if (sameSense(slope, slopeNear)) {
                    near = bend;
                    slopeNear = slope;
                } else {
                    far = bend;
                    slopeFar = slope;
                }
            }
        }
        return near + (far - near) * slopeNear / (slopeNear - slopeFar);
    }

    private static boolean sameSense(double one, double other) {
        return one > 0 && other > 0 || one < 0 && other < 0;
    }

    // half the derivative of Σ effort² by the tangent; the torque of `balanced` is 0 there, whatever rounding says
    private double slope(int limb, int cell, double tangent, int balanced) {
        double sum = 0;
        for (int j = 0; j < JOINTS; j++) {
            int at = cell * JOINTS + j;
            double t = torque[j] + perTangent[j] * tangent;
            if (j != balanced) {
                sum += t * perTangent[j] * ground.capacity().inverseSquare(limb, at, t);
            }
        }
        return sum;
    }
}
