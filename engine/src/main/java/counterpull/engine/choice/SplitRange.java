package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import java.util.ArrayList;
import java.util.List;

/**
 * The search for split ranges: for each seat and foot row, every set over the whole range with every set over the part above
 * each of the real stops. At each position of the whole range the smaller of the two squared shortfalls counts; below the
 * upper set's stop only the whole one's. Limits hold in each set by itself; the upper set keeps the same seconds over its
 * shorter travel.
 *
 * <p>Exact for the best pair: a set is left out only when another one misses the target by no more at every position, a pair
 * only when even an ideal partner could not make it one of the best. So the runners-up are pairs of sets that each have a
 * part of the range where nothing beats them.
 */
final class SplitRange {
    private static final double TOUCH = 1e-9;
    private static final int KEPT = 64;
    private final Question question;
    private final List<PlateSet> plates;
    private final Rejections rejections;
    private final List<Candidate.Place> wholes = new ArrayList<>();
    private final List<SplitSetup> best = new ArrayList<>();
    private int place;
    private int stop;
    private List<Scored> whole;
    private final Tally tally = new Tally();
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

    /** One set with its squared shortfall at each position and moving phase of the whole range. */
    private record Scored(Candidate candidate, double[] missed) {}

    boolean advance(int budget) {
        int before = considered;
        while (!finished() && considered - before < budget) {
            Candidate.Place at = wholes.get(place);
            if (whole == null) {
                whole = scored(at.ground(), at, new Span(0, 0));
            }
            double[] stops = Places.shallower(at.ground().task(), at.stroke());
            if (stop < stops.length) {
                above(at, stops[stop]);
                stop++;
            } else {
                stop = 0;
                whole = null;
                place++;
            }
        }
        return !finished();
    }

    boolean finished() {
        return place >= wholes.size();
    }

    int considered() {
        return considered;
    }

    List<SplitSetup> best() {
        return List.copyOf(best);
    }

    private void above(Candidate.Place at, double from) {
        try {
            pairs(at, upper(at, from), from);
        } catch (Refusal refusal) {
            // for instance a bounce that does not fit into the shorter range
            rejections.refused("upper set of a split with " + Places.words(at.stance()), refusal);
        }
    }

    /** The sets above a stop: judged from the stop itself, scored at the whole range's positions. */
    private List<Scored> upper(Candidate.Place at, double from) {
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
        return scored(ground, new Candidate.Place(at.stance(), stroke, ground, leftOut), new Span(first, stopApart));
    }

    /**
     * Which of the whole range's positions a set covers.
     *
     * @param skipped how many of them lie below it
     * @param apart 1 where the set is also looked at from a stop between two of them, else 0
     */
    private record Span(int skipped, int apart) {}

    private List<Scored> scored(Groundwork ground, Candidate.Place at, Span span) {
        // which lines cannot hang here is said by the other strategies
        LinesOnGround lines = LinesOnGround.of(question.kit(), ground, new Rejections());
        Scorer scorer = new Scorer(ground, question.goal());
        List<Scored> found = new ArrayList<>();
        for (int set = 0; set < lines.count(); set++) {
            Groundwork laid = ground.with(lines.series(set));
            scorer.hang(lines.series(set));
            for (PlateSet plate : plates) {
                considered++;
                Loading loading = new Loading(plate.total(), lines.lines(set));
                scorer.score(loading, laid, tally);
                Candidate candidate =
                        new Candidate(at, plate, loading.lines(), question.goal(), Candidate.Score.of(tally));
                if (tally.feasible()) {
                    double[] missed = scorer.missed(span.skipped, span.apart, loading, laid);
                    keepUndominated(found, new Scored(candidate, missed));
                } else if (span.skipped == 0 && !question.strategies().contains(lines.strategy(set))) {
                    reject(candidate);
                }
            }
        }
        return found;
    }

    // a whole set that no other strategy has judged already
    private void reject(Candidate candidate) {
        if (rejections.passed(tally)) {
            rejections.nearest(candidate);
        }
    }

    private static void keepUndominated(List<Scored> found, Scored next) {
        for (Scored other : found) {
            if (dominates(other.missed, next.missed)) {
                return;
            }
        }
        found.removeIf(other -> dominates(next.missed, other.missed));
        found.add(next);
    }

    /** Whether one set misses by no more than another at every position; what is not known is equal to itself alone. */
    private static boolean dominates(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            if (!(one[i] <= other[i] || Double.isNaN(one[i]) && Double.isNaN(other[i]))) {
                return false;
            }
        }
        return true;
    }

    private void pairs(Candidate.Place at, List<Scored> uppers, double from) {
        if (uppers.isEmpty()) {
            return;
        }
        double[] least = least(uppers);
        double changeover = (from - at.stroke().bottom()) / at.stroke().travel();
        List<Scored> lows = byBound(whole, least);
        List<Scored> highs = byBound(uppers, lows.isEmpty() ? least : least(lows));
        for (Scored low : lows) {
            // sorted by their bound: past the first that cannot help, none can
            if (bound(low.missed, least) >= bar()) {
                return;
            }
            for (Scored high : highs) {
                double mean = mean(low.missed, high.missed, bar());
                if (mean < bar()) {
                    keep(new SplitSetup(low.candidate, high.candidate, changeover, Math.sqrt(mean)));
                }
            }
        }
    }

    /** The sets, the one that could do best with an ideal partner first. */
    private static List<Scored> byBound(List<Scored> sets, double[] ideal) {
        double[] bound = new double[sets.size()];
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < bound.length; k++) {
            bound[k] = bound(sets.get(k).missed, ideal);
            order.add(k);
        }
        order.sort((a, b) -> Double.compare(bound[a], bound[b]));
        List<Scored> sorted = new ArrayList<>();
        for (int k : order) {
            sorted.add(sets.get(k));
        }
        return sorted;
    }

    /** The least known value of all upper sets at each place; infinite where none knows any. */
    private static double[] least(List<Scored> uppers) {
        double[] least = new double[uppers.get(0).missed.length];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (Scored upper : uppers) {
            for (int i = 0; i < least.length; i++) {
                if (upper.missed[i] < least[i]) {
                    least[i] = upper.missed[i];
                }
            }
        }
        return least;
    }

    /** No more than the mean of this set with any partner: the least sum over the most places that could count. */
    private static double bound(double[] low, double[] least) {
        double sum = 0;
        int most = 0;
        for (int i = 0; i < low.length; i++) {
            double smaller = Math.min(low[i], least[i]);
            sum += smaller < Double.POSITIVE_INFINITY ? smaller : 0;
            boolean known = !Double.isNaN(low[i]) && low[i] < Double.POSITIVE_INFINITY;
            most += known || least[i] < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        return most == 0 ? Double.POSITIVE_INFINITY : sum / most;
    }

    /**
     * Mean over what is known of the smaller of two squared shortfalls; where one is not known the other counts. Infinite as
     * soon as it is sure to reach {@code bar}.
     */
    private static double mean(double[] low, double[] high, double bar) {
        double enough = bar * low.length;
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < low.length; i++) {
            double smaller = high[i] < low[i] || Double.isNaN(low[i]) ? high[i] : low[i];
            if (smaller < Double.POSITIVE_INFINITY) {
                sum += smaller;
                counted++;
                if (sum > enough) {
                    return Double.POSITIVE_INFINITY;
                }
            }
        }
        return counted == 0 ? Double.POSITIVE_INFINITY : sum / counted;
    }

    private double bar() {
        if (best.size() < KEPT) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = best.get(best.size() - 1).shortfall();
        return worst * worst;
    }

    private void keep(SplitSetup pair) {
        if (best.size() >= KEPT && pair.shortfall() >= best.get(best.size() - 1).shortfall()) {
            return;
        }
        int at = best.size();
        while (at > 0 && better(pair, best.get(at - 1))) {
            at--;
        }
        best.add(at, pair);
        if (best.size() > KEPT) {
            best.remove(best.size() - 1);
        }
    }

    private static boolean better(SplitSetup one, SplitSetup other) {
        return one.shortfall() < other.shortfall() - 1e-12;
    }
}
