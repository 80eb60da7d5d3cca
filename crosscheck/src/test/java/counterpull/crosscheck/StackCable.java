package counterpull.crosscheck;

import counterpull.engine.planar.Vec;

/**
 * A cable from a fixed pulley to a point of a segment, with a stack behind it.
 *
 * @param segment the segment it is tied to
 * @param along where on it, from its proximal joint, m
 * @param across the same to the left of the segment's direction, m
 * @param pulley where the line leaves the fixed pulley, the plane's axes, m
 * @param stack what hangs on the line
 */
record StackCable(int segment, double along, double across, Vec pulley, Stack stack) {
    /**
     * What hangs on a line.
     *
     * @param mass of the stack, kg
     * @param extra mass that moves with the line and is not weighed, kg
     * @param ratio line travel over stack travel
     * @param friction share lost each way
     */
    record Stack(double mass, double extra, double ratio, double friction) {}

    /** Tension of a line as it runs, N. */
    interface Law {
        double tension(Stack stack, LineMotion line, double gravity);
    }

    /** k·m(g + l̈/R)/R + m_extra·l̈, k = 1 ± friction by the line's own way. */
    static double tension(Stack stack, LineMotion line, double gravity) {
        double k = 1 + Math.signum(line.rate()) * stack.friction;
        double weighed = stack.mass * (gravity + line.acceleration() / stack.ratio);
        return k * weighed / stack.ratio + stack.extra * line.acceleration();
    }

    /** Its pull on the segment, N. */
    Vec pull(Law law, LineMotion line, double gravity) {
        return line.direction().times(-law.tension(stack, line, gravity));
    }
}
