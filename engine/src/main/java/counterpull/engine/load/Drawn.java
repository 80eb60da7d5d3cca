package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;

/**
 * The straight line from a moving point to a fixed one, over a range: its length l, m, and how l changes with the coordinate x of the
 * stroke. With r from the fixed point to the moving one: l′ = r·r′/l, l″ = (r′·r′ + r·r″ − l′²)/l.
 */
final class Drawn {
    // no hook comes nearer to a pulley, m; ours. A point led past one would turn the line round from one position to
    // the next
    private static final double NEAREST = 0.01;
    private final double[] length;
    private final double[] slope;
    private final double[] curve;
    private final double[][] toward;

    /**
     * @param track the moving point
     * @param fixed where the other end is
     * @param words what the line is called where the two meet
     */
    Drawn(PointTrack track, Vec fixed, String words) {
        length = new double[track.positions()];
        slope = new double[length.length];
        curve = new double[length.length];
        toward = new double[length.length][];
        for (int i = 0; i < length.length; i++) {
            Vec from = track.at(i).minus(fixed);
            length[i] = apart(from.norm(), words);
            slope[i] = from.dot(track.slope(i)) / length[i];
            double bend = track.slope(i).dot(track.slope(i)) + from.dot(track.curve(i));
            curve[i] = (bend - slope[i] * slope[i]) / length[i];
            toward[i] = new double[] {-from.x() / length[i], -from.y() / length[i]};
        }
    }

    private static double apart(double distance, String words) {
        if (distance < NEAREST) {
            throw new Refusal(
                    Fault.COINCIDENT_POINTS,
                    "length of the line of " + words,
                    distance,
                    NEAREST,
                    "m",
                    "the point that it pulls on meets the pulley, where the line has no direction: move the pulley");
        }
        return distance;
    }

    double length(int i) {
        return length[i];
    }

    /** l̇ in a phase, m/s. */
    double speed(Course course, Phase phase, int i) {
        return slope[i] * course.speed(phase, i);
    }

    /** Which way it goes in a phase, also where the speed is zero: positive where it grows, 0 held. */
    double sense(Phase phase, int i) {
        return slope[i] * phase.sense();
    }

    /** l̈ in a phase, m/s². */
    double acceleration(Course course, Phase phase, int i) {
        double v = course.speed(phase, i);
        return slope[i] * course.acceleration(phase, i) + curve[i] * v * v;
    }

    /** Unit vectors from the moving point to the fixed one, by position. */
    double[][] toward() {
        return toward;
    }
}
