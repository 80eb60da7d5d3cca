package counterpull.engine.load;

import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;

/** How the line on a cam runs over a range: y drawn in, ẏ = σ r φ̇, ÿ = σ (r φ̈ + r′ φ̇²), σ the lever's turning while the limb lifts. */
final class CamRun {
    private final LeverPath lever;
    private final double[] radius;
    private final double[] drawn;
    private final double[] rise;
    private final double[] acceleration;

    CamRun(LeverPath lever, CamRadius cam) {
        this.lever = lever;
        Course course = lever.course();
        radius = new double[course.positions()];
        drawn = new double[course.positions()];
        rise = new double[course.cells()];
        acceleration = new double[course.cells()];
        CamCurve curve = new CamCurve(cam);
        for (int i = 0; i < radius.length; i++) {
            place(curve, i);
        }
    }

    private void place(CamCurve curve, int i) {
        double angle = lever.angle(i);
        double slope = lever.sense() * curve.slope(angle);
        radius[i] = lever.sense() * curve.radius(angle);
        drawn[i] = lever.sense() * curve.drawn(angle);
        for (Phase phase : Phase.values()) {
            int cell = lever.course().cell(phase, i);
            double turning = lever.speed(phase, i);
            rise[cell] = Math.signum(radius[i]) * lever.turning(phase, i);
            acceleration[cell] = radius[i] * lever.acceleration(phase, i) + slope * turning * turning;
        }
    }

    /** Line drawn in, m, from some fixed state. */
    double drawn(int i) {
        return drawn[i];
    }

    /** ẏ, m/s. */
    double speed(Phase phase, int i) {
        return radius[i] * lever.speed(phase, i);
    }

    /** The sign of the stack's rise by phase × position. */
    double[] rise() {
        return rise;
    }

    /** ÿ by phase × position, m/s². */
    double[] acceleration() {
        return acceleration;
    }

    /** Counter-clockwise torque on the lever for each newton of the line, m. */
    double[] torquePerPull() {
        double[] against = new double[radius.length];
        for (int i = 0; i < against.length; i++) {
            against[i] = -radius[i];
        }
        return against;
    }
}
