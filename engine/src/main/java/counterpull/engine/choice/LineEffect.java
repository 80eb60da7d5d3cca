package counterpull.engine.choice;

import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.Phase;

/**
 * What a line does over a range, held still: where it takes load off or adds it. Rubber whose pull never falls with stretch
 * cannot do the two effects "elsewhere" on a straight rail; they are there for a law that might.
 */
public enum LineEffect {
    /** Pulls toward the top everywhere, most at the bottom. */
    RELIEVES_LOW("takes load off low"),
    /** Pulls toward the bottom everywhere, most at the top. */
    ADDS_HIGH("adds load high"),
    /** Never tightens: the same setup as without it. */
    NEVER_TIGHTENS("never tightens in this range"),
    /** Pulls toward the top, but most away from the bottom. */
    RELIEVES_ELSEWHERE("takes load off, but not most at the bottom"),
    /** Pulls toward the bottom, but most away from the top. */
    ADDS_ELSEWHERE("adds load, but not most at the top"),
    /** Pulls one way in one part of the range and the other way in another. */
    CHANGES_SIDES("pulls up in one part of the range and down in another");

    private static final double TOUCH = 1e-9;
    private final String words;

    LineEffect(String words) {
        this.words = words;
    }

    /** The effect in words. */
    public String words() {
        return words;
    }

    /** The effect of a line over its series. */
    static LineEffect of(LineSeries line, int positions) {
        if (!line.tightens()) {
            return NEVER_TIGHTENS;
        }
        double most = 0;
        double least = 0;
        for (int i = 0; i < positions; i++) {
            double push = line.push(Phase.HELD, i);
            most = Math.max(most, push);
            least = Math.min(least, push);
        }
        if (most > TOUCH && least < -TOUCH) {
            return CHANGES_SIDES;
        }
        if (-least >= most) {
            return line.push(Phase.HELD, 0) <= least + TOUCH ? RELIEVES_LOW : RELIEVES_ELSEWHERE;
        }
        return line.push(Phase.HELD, positions - 1) >= most - TOUCH ? ADDS_HIGH : ADDS_ELSEWHERE;
    }
}
