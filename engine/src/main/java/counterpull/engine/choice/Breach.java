package counterpull.engine.choice;

import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import java.util.Optional;

/**
 * A limit passed, or how near it is: the place where the value lies farthest past (or nearest to) it.
 *
 * @param kind which limit
 * @param value the value there, SI
 * @param limit the limit, SI
 * @param where where in the range
 */
public record Breach(LimitKind kind, double value, double limit, Where where) {
    /** Share of a limit by which it may be touched without being passed: rounding. */
    static final double TOUCH = 1e-12;

    /**
     * A place in the range.
     *
     * @param phase phase
     * @param position index of the position, bottom first; −1 where the value belongs to the whole stroke
     * @param side whose joint, if a joint's
     * @param action what the joint is asked for, if a joint's
     * @param label what else is meant (an anchor's name), or empty
     */
    public record Where(Phase phase, int position, Optional<Side> side, Optional<Action> action, String label) {
        static Where stroke(String label) {
            return new Where(Phase.HELD, -1, Optional.empty(), Optional.empty(), label);
        }

        static Where at(Phase phase, int position) {
            return new Where(phase, position, Optional.empty(), Optional.empty(), "");
        }
    }

    /** How far past the limit, as a share of it: positive passes, negative keeps it. */
    public double excess() {
        double scale = Math.max(Math.abs(limit), 1e-12);
        return kind == LimitKind.FLOOR ? (limit - value) / scale : (value - limit) / scale;
    }

    /** Whether the limit is passed; an exact touch is kept. */
    public boolean passed() {
        return excess() > TOUCH;
    }
}
