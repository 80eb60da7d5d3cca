package counterpull.engine.choice;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;

/**
 * One setup that a search found: scored, and judged in full only when asked for its verdict.
 *
 * @param place where the person is and which stop is set
 * @param plates what is on the horns
 * @param lines the rubber
 * @param goal what it is held against
 * @param score its shortfall and peak effort, as the search found them
 */
public record Candidate(Place place, PlateSet plates, List<ElasticLine> lines, Goal goal, Score score) {
    public Candidate {
        lines = List.copyOf(lines);
    }

    /**
     * Where a person is put, and the range that leaves them.
     *
     * @param stance seat, foot row, pressure point
     * @param stroke the range from stop to top
     * @param ground movement, terms and strength over that range
     * @param leftOut what a shallower stop leaves out of the person's own range
     */
    public record Place(Stance stance, RailStroke stroke, Groundwork ground, LeftOut leftOut) {
        /** A place at the person's own stop. */
        public Place(Stance stance, RailStroke stroke, Groundwork ground) {
            this(stance, stroke, ground, LeftOut.NOTHING);
        }
    }

    /**
     * Shortfall over the person's own range, by which setups are ranked: where the stop is a shallower one, the target below it
     * counts as missed in full, so that ranges of different length compare fairly; otherwise the score's. NaN where no effort
     * is known.
     */
    public double shortfallOverOwnRange() {
        return place.leftOut.shortfall(score.shortfall);
    }

    /**
     * How a setup did in the search.
     *
     * @param shortfall √(mean of max(0, target − effort)²), a pure number; NaN where no effort is known anywhere
     * @param peak largest effort of the named joints in any phase; NaN where none is known
     * @param excess how far past its tightest limit, as a share of it; negative keeps every limit
     */
    public record Score(double shortfall, double peak, double excess) {
        /** The score that a verdict amounts to. */
        public static Score of(Verdict verdict) {
            return new Score(
                    verdict.shortfall(),
                    verdict.peak().map(p -> p.limiting().effort()).orElse(Double.NaN),
                    verdict.tightest().map(Breach::excess).orElse(Double.NEGATIVE_INFINITY));
        }

        static Score of(Tally tally) {
            return new Score(tally.shortfall, tally.peak, tally.worst());
        }
    }

    /** The full verdict, judged afresh on the full profile, also where contact is lost. */
    public Verdict verdict() {
        return Judge.of(anyProfile(), goal);
    }

    /** The full profile, computed afresh, also where contact is lost: for a setup that fails. */
    public PressProfile anyProfile() {
        List<LineSeries> series = new ArrayList<>();
        for (ElasticLine line : lines) {
            series.add(place.ground.series(line));
        }
        return PressProfile.onGround(place.ground.with(series), loading());
    }

    /** The same with other plates, scored afresh. */
    public Candidate with(PlateSet other) {
        Candidate unscored = new Candidate(place, other, lines, goal, score);
        return new Candidate(place, other, lines, goal, Score.of(unscored.verdict()));
    }

    /** What is on the sled. */
    public Loading loading() {
        return new Loading(plates.total(), lines);
    }

    /** The full profile, computed afresh. */
    public PressProfile profile() {
        return PressProfile.of(place.ground, loading());
    }

    /** Plates and pieces of rubber that are handled. */
    public int pieces() {
        int sum = plates.pieces();
        for (ElasticLine line : lines) {
            sum += line.pieces().count();
        }
        return sum;
    }

    /**
     * Whether a person would call the two setups different: other rubber, hole, dead length, seat, foot row or stop, or plates
     * 5 kg or more apart.
     */
    public boolean differsFrom(Candidate other) {
        return !lines.equals(other.lines)
                || !place.stance.equals(other.place.stance)
                || place.stroke.bottom() != other.place.stroke.bottom()
                || Math.abs(plates.total() - other.plates.total()) >= 5;
    }
}
