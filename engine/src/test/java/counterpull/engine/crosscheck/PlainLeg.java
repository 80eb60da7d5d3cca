package counterpull.engine.crosscheck;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;

/**
 * A leg as plain numbers, and where its parts are when hip and ankle are given: by the law of cosines and bearings, in the
 * axes of the rail. Arrays of two are (along the rail, across it), m.
 */
final class PlainLeg {
    final double[] length = new double[2];
    final double[] mass = new double[3];
    final double[] inertia = new double[3];
    final double[][] com = new double[3][];
    final double footLength;
    final double ankleHeight;
    final double ankleFromHeel;

    PlainLeg(Leg leg) {
        take(0, leg.thigh());
        take(1, leg.shank());
        Foot foot = leg.foot();
        mass[2] = foot.mass();
        inertia[2] = foot.inertia();
        com[2] = new double[] {0.5 * foot.length() - foot.ankleFromHeel(), -0.5 * foot.ankleHeight()};
        footLength = foot.length();
        ankleHeight = foot.ankleHeight();
        ankleFromHeel = foot.ankleFromHeel();
    }

    private void take(int i, Segment segment) {
        length[i] = segment.length();
        mass[i] = segment.mass();
        inertia[i] = segment.inertia();
        com[i] = new double[] {segment.comAlong(), segment.comAcross()};
    }

    /** Distance hip → ankle with the knee bent by this much, m. */
    double reach(double kneeFlexion) {
        double a = length[0];
        double b = length[1];
        return Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(Math.PI - kneeFlexion));
    }

    /** Directions of thigh, shank and foot for a hip and an ankle, with the knee on the head's side of the line. */
    double[] directions(double[] hip, double[] ankle, double foot) {
        double x = ankle[0] - hip[0];
        double y = ankle[1] - hip[1];
        double c = Math.hypot(x, y);
        double a = length[0];
        double b = length[1];
        double atHip = Math.acos((a * a + c * c - b * b) / (2 * a * c));
        double thigh = Math.atan2(y, x) + atHip;
        double shank = Math.atan2(ankle[1] - hip[1] - a * Math.sin(thigh), ankle[0] - hip[0] - a * Math.cos(thigh));
        return new double[] {thigh, shank, foot};
    }

    /** A point of a segment, from its proximal joint. */
    static double[] point(double[] joint, double direction, double[] along) {
        double c = Math.cos(direction);
        double s = Math.sin(direction);
        return new double[] {joint[0] + c * along[0] - s * along[1], joint[1] + s * along[0] + c * along[1]};
    }
}
