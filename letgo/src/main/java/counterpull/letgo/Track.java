package counterpull.letgo;

import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;

/**
 * Where a machine's own coordinate is at every position of a range, above its lowest, with its slope by the stroke's coordinate: what ties a
 * release to what the person was doing.
 *
 * @param place m or rad, by position
 * @param slope d(place)/dx, by position
 */
record Track(double[] place, double[] slope) {
    // a machine that stands still at an end of a range does so to rounding
    static final double STANDSTILL = 1e-9;

    double highest() {
        double most = 0;
        for (double at : place) {
            most = Math.max(most, at);
        }
        return most;
    }

    /** Whether it goes one way from the bottom to the top. */
    boolean onward() {
        for (double way : slope) {
            if (way < -STANDSTILL) {
                return false;
            }
        }
        return highest() > STANDSTILL;
    }

    Releases releases(LoneMachine machine, int[] positions, Course course) {
        double[] places = new double[positions.length];
        double[] speeds = new double[positions.length];
        for (int k = 0; k < positions.length; k++) {
            places[k] = place[positions[k]];
            speeds[k] = slope[positions[k]] * course.speed(Phase.LOWERING, positions[k]);
        }
        return Releases.of(machine, places, speeds);
    }
}
