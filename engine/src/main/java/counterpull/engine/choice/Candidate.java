package counterpull.engine.choice;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Profile;
import java.util.List;

/**
 * One setup that keeps every limit.
 *
 * @param place where the person is and which stop is set
 * @param plates what is on the horns
 * @param lines the rubber
 * @param verdict how it does over its own range
 * @param shortfall over the range from the person's own stop: where this setup's stop is a shallower one, the target below
 *     it counts as missed in full, so that ranges of different length compare fairly; otherwise the verdict's. NaN where no
 *     effort is known
 */
public record Candidate(Place place, PlateSet plates, List<ElasticLine> lines, Verdict verdict, double shortfall) {
    public Candidate {
        lines = List.copyOf(lines);
    }

    /** A setup at the person's own stop. */
    public Candidate(Place place, PlateSet plates, List<ElasticLine> lines, Verdict verdict) {
        this(place, plates, lines, verdict, verdict.shortfall());
    }

    /**
     * Where a person is put, and the range that leaves them.
     *
     * @param stance seat, foot row, pressure point
     * @param stroke the range from stop to top
     * @param ground movement, terms and strength over that range
     */
    public record Place(Stance stance, RailStroke stroke, Groundwork ground) {}

    /** What is on the sled. */
    public Loading loading() {
        return new Loading(plates.total(), lines);
    }

    /** The full profile, computed afresh. */
    public Profile profile() {
        return Profile.of(place.ground, loading());
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
