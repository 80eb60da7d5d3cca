package counterpull.engine.load;

import counterpull.engine.motion.Course;

/**
 * Where the work done on one thing that resists goes, over a whole range, for a stated amount on it. What a limb does on it in a
 * phase, per second, is d(stored + kinetic)/dt + lost. Read-only by agreement.
 *
 * @param stored energy of height and of stretch, J, by phase × position; only its changes mean something
 * @param kinetic energy of motion, J, by phase × position
 * @param lost power that friction and rubber turn into heat, W, zero or more, by phase × position
 */
public record Ledger(double[] stored, double[] kinetic, double[] lost) {
    /** All zero, to be filled by its maker. */
    static Ledger empty(Course course) {
        return new Ledger(new double[course.cells()], new double[course.cells()], new double[course.cells()]);
    }
}
