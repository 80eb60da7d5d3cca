package counterpull.engine.load;

import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;

/** Arithmetic on shares over phase × position. */
final class Shares {
    private Shares() {}

    /** The share with each phase's value at position i multiplied by factor[i]. */
    static Share times(Share share, double[] factor, Course course) {
        double[] scaled = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < factor.length; i++) {
                int cell = course.cell(phase, i);
                scaled[cell] = share.perUnit()[cell] * factor[i];
            }
        }
        return new Share(share.part(), share.label(), share.amount(), scaled);
    }
}
