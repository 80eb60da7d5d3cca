package counterpull.scenario.content;

import counterpull.engine.body.Side;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.Pushing;
import java.util.List;

/**
 * What the person does on the machine.
 *
 * @param using which limbs push
 * @param leftShare the left limb's fraction of the outer load; counts where both push
 * @param stance seat, foot row, pressure point, hip shift
 * @param pushing which way they push
 * @param trying what else may be tried
 */
public record Exercise(Using using, double leftShare, Stance stance, Pushing pushing, Trying trying) {

    /** Which limbs push. */
    public enum Using {
        BOTH("both"),
        LEFT("left"),
        RIGHT("right");

        private final String words;

        Using(String words) {
            this.words = words;
        }

        /** How a file says it. */
        public String words() {
            return words;
        }

        /** Whether a limb pushes. */
        public boolean uses(Side side) {
            return this == BOTH || words.equals(side.words());
        }
    }

    /**
     * Settings that a search may try.
     *
     * @param seats seat settings, the one in use among them
     * @param rows foot rows, the one in use among them
     * @param furtherStops how many stops beyond the person's own
     */
    public record Trying(List<SeatSetting> seats, List<FootRow> rows, int furtherStops) {
        public Trying {
            seats = List.copyOf(seats);
            rows = List.copyOf(rows);
        }
    }

    /** A limb's share of the outer load. */
    public double share(Side side) {
        return new Sides(using, leftShare).share(side);
    }
}
