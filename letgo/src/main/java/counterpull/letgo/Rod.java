package counterpull.letgo;

import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Guide;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What goes with a part of a machine in the limb's stead when nobody is on it: a bare rod without weight, which moves one unit for
 * each unit (rad or m) of the part's own coordinate u. So the engine's own laws say what acts on the part, by u instead of by a limb's stroke.
 */
sealed interface Rod permits LeverRod, RailRod {
    /** The rod at one place u, m or rad above the bottom of the range: every position of the course is that place. */
    ChainPath at(double u, Course course);

    /** How far the part goes from the bottom to the top of the range, m or rad. */
    double travel();

    /** The same thing on the rod instead of on the limb; empty where it is not on this part, or hangs on something else that moves. */
    Optional<Resistance> carry(Resistance resistance);

    /** The same end of a line on the rod, or the same fixed place as the rod's own origin sees it; empty for an end that moves elsewhere. */
    Optional<LineEnd> end(LineEnd end);

    /** A fixed place of the exercise as the rod's own origin sees it, m. */
    Vec seen(Vec at);

    /** A line with both of its ends on this part or on something fixed. */
    default Optional<Resistance> carry(StretchLine line) {
        Optional<LineEnd> from = end(line.from());
        Optional<LineEnd> to = end(line.to());
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        List<Guide> guides = new ArrayList<>();
        for (Guide guide : line.guides()) {
            guides.add(new Guide(guide.name(), seen(guide.at()), guide.lateral(), guide.loss()));
        }
        return Optional.of(new StretchLine(
                line.name(), line.rubber(), line.pieces(), line.deadLength(), from.get(), to.get(), guides));
    }

    /** A fixed end as the rod's own origin sees it. */
    default LineEnd seen(FixedPoint fixed) {
        return new FixedPoint(fixed.name(), seen(fixed.at()), fixed.lateral(), fixed.rating());
    }
}
