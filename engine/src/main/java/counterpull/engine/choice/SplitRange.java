package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.choice.SplitSets.Part;
import counterpull.engine.choice.SplitSets.Scored;
import counterpull.engine.choice.SplitSets.Span;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import java.util.ArrayList;
import java.util.List;

/**
 * The search for split ranges: for each seat and foot row, every set over the whole range with every set over the part above
 * each of the real stops. At each position of the whole range the smaller of the two squared shortfalls counts; below the
 * upper set's stop only the whole one's. Limits hold in each set by itself; the upper set keeps the same seconds over its
 * shorter travel (a bounce keeps its speeds).
 *
 * <p>Exact for the best pair: a set is left out only when another one misses the target by no more at every position, a pair
 * only when even an ideal partner could not make it one of the best. So the runners-up are pairs of sets that each have a
 * part of the range where nothing beats them.
 */
final class SplitRange {
    private static final double TOUCH = 1e-9;
    private final Question question;
    private final List<PlateSet> plates;
    private final Rejections rejections;
    private final List<Candidate.Place> wholes = new ArrayList<>();
    private final SplitBest best = new SplitBest();
    private int place;
    private int stop;
    private double[] stops;
    private List<Scored> whole;
    private SplitSets scoring;
    private SplitPairs pairing;
    private int considered;

    SplitRange(Question question, List<Candidate.Place> places, List<PlateSet> plates, Rejections rejections) {
        this.rejections = rejections;
        this.question = question;
        this.plates = plates;
        for (Candidate.Place candidate : places) {
            boolean first = true;
            for (Candidate.Place other : wholes) {
                first &= !other.stance().equals(candidate.stance());
            }
            if (first) {
                wholes.add(candidate);
            }
        }
    }

    /** Goes on for about {@code budget} sets or as many times a thousand pairs; answers whether there is more to do. */
    boolean advance(int budget) {
        double left = budget;
        while (!finished() && left > 0) {
            left -= step((int) Math.ceil(left));
        }
        return !finished();
    }

    private double step(int budget) {
        if (pairing != null) {
            return pair();
        }
        if (scoring == null) {
            begin();
            return 0;
        }
        int done = scoring.advance(budget);
        considered += done;
        if (scoring.finished()) {
            scored();
        }
        return done;
    }

    /** Begins with the whole range of a place, then with the part above each of its stops. */
    private void begin() {
        Candidate.Place at = wholes.get(place);
        if (whole == null) {
            stops = Places.shallower(at.ground().task(), at.stroke());
            stop = 0;
            scoring = new SplitSets(question, plates, new Part(at, new Span(0, 0)), rejections);
        } else if (stop < stops.length) {
            beginUpper(at);
        } else {
            whole = null;
            place++;
        }
    }

    private void beginUpper(Candidate.Place at) {
        try {
            scoring = new SplitSets(question, plates, upper(at, stops[stop]), rejections);
        } catch (Refusal refusal) {
            // for instance a bounce that does not fit into the shorter range
            rejections.refused("upper set of a split with " + Places.words(at.stance()), refusal);
            stop++;
        }
    }

    private void scored() {
        if (whole == null) {
            whole = scoring.kept();
        } else {
            RailStroke stroke = wholes.get(place).stroke();
            double changeover = (stops[stop] - stroke.bottom()) / stroke.travel();
            pairing = new SplitPairs(whole, scoring.kept(), changeover, best);
        }
        scoring = null;
    }

    private double pair() {
        double done = 0;
        if (!pairing.finished()) {
            done = pairing.advance() / 1000.0;
        }
        if (pairing.finished()) {
            pairing = null;
            stop++;
        }
        return done;
    }

    boolean finished() {
        return place >= wholes.size();
    }

    int considered() {
        return considered;
    }

    Search.Splits progress() {
        return new Search.Splits(place, wholes.size());
    }

    List<SplitSetup> best() {
        return best.pairs();
    }

    /** The part above a stop: judged from the stop itself, scored at the whole range's positions. */
    private Part upper(Candidate.Place at, double from) {
        PressMotion motion = at.ground().motion();
        int first = 0;
        while (motion.plate(first) < from - TOUCH) {
            first++;
        }
        int stopApart = motion.plate(first) > from + TOUCH ? 1 : 0;
        double[] plate = new double[motion.positions() - first + stopApart];
        for (int i = first; i < motion.positions(); i++) {
            plate[i - first + stopApart] = motion.plate(i);
        }
        plate[0] = from;
        RailStroke stroke = at.stroke().from(from);
        Groundwork ground = Groundwork.of(at.ground().task(), stroke, plate);
        LeftOut leftOut = LeftOut.of(motion, from, question.goal().target());
        return new Part(new Candidate.Place(at.stance(), stroke, ground, leftOut), new Span(first, stopApart));
    }
}
