package counterpull.engine.choice;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Limiting;
import java.util.List;
import java.util.Optional;

/**
 * How one setup does against the goal.
 *
 * @param shortfall √(mean over positions and both moving phases of max(0, target − effort)²) of the limiting joint, a pure
 *     number; NaN where no effort is known anywhere
 * @param peak the largest effort of the named joints in any phase, with its place; empty where none is known
 * @param unknown how many of the positions × moving phases have no known effort at all, and so count in nothing
 * @param nearest for each stated limit the place where the setup is nearest to it or farthest past it
 */
public record Verdict(double shortfall, Optional<Peak> peak, int unknown, List<Breach> nearest) {
    public Verdict {
        nearest = List.copyOf(nearest);
    }

    /**
     * The largest effort and where it is.
     *
     * @param limiting joint, side, action and effort
     * @param phase phase
     * @param position index of the position
     */
    public record Peak(Limiting limiting, Phase phase, int position) {}

    /** Whether every limit is kept. */
    public boolean feasible() {
        for (Breach breach : nearest) {
            if (breach.passed()) {
                return false;
            }
        }
        return true;
    }

    /** The limit that is farthest past, or nearest to being passed; empty where none is stated. */
    public Optional<Breach> tightest() {
        Breach worst = null;
        for (Breach breach : nearest) {
            if (worst == null || breach.excess() > worst.excess()) {
                worst = breach;
            }
        }
        return Optional.ofNullable(worst);
    }
}
