package counterpull.crosscheck;

import counterpull.engine.planar.Vec;

/**
 * A point of a chain and its motion, summed link by link from the absolute directions: place, velocity and acceleration in the
 * plane's axes.
 */
record PlainPoint(Vec place, Vec velocity, Vec acceleration) {
    /** The point at an arm from this one, on a body that turns: rate rad/s, turning acceleration rad/s². */
    PlainPoint plus(Vec arm, double rate, double turning) {
        Vec along = arm.left();
        return new PlainPoint(
                place.plus(arm),
                velocity.plus(along.times(rate)),
                acceleration.plus(along.times(turning)).minus(arm.times(rate * rate)));
    }
}
