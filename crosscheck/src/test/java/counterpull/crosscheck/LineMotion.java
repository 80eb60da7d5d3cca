package counterpull.crosscheck;

import counterpull.engine.planar.Vec;

/**
 * How a straight line from a fixed pulley to a moving point runs: from the point's own motion, by differentiating
 * l = |point − pulley| twice.
 *
 * @param direction unit vector from the pulley to the point
 * @param length m
 * @param rate dl/dt, m/s, positive while it runs out
 * @param acceleration d²l/dt², m/s²
 */
record LineMotion(Vec direction, double length, double rate, double acceleration) {
    static LineMotion of(Vec fromPulley, Vec velocity, Vec acceleration) {
        double length = fromPulley.norm();
        Vec direction = fromPulley.times(1 / length);
        double rate = direction.dot(velocity);
        double across = direction.cross(velocity);
        return new LineMotion(direction, length, rate, direction.dot(acceleration) + across * across / length);
    }

    LineMotion withAcceleration(double other) {
        return new LineMotion(direction, length, rate, other);
    }

    LineMotion backwards() {
        return new LineMotion(direction, length, -rate, acceleration);
    }
}
