package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
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
    private static final int KEPT = 64;
    private final Question question;
    private final List<PlateSet> plates;
    private final List<Candidate.Place> wholes = new ArrayList<>();
    private final List<SplitSetup> best = new ArrayList<>();
    private int place;
    private int stop;
    private List<Scored> whole;
    private final Tally tally = new Tally();
    private int considered;

    SplitRange(Question question, List<Candidate.Place> places, List<PlateSet> plates) {
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
        int until = considered + budget;
        while (!finished() && considered < until) {
            Candidate.Place at = wholes.get(place);
            if (whole == null) {
                whole = scored(at.ground(), at, 0);
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
        int first = 0;
        PressMotion motion = at.ground().motion();
        while (first < motion.positions() && motion.plate(first) < from - 1e-9) {
            first++;
        }
        // fewer than three positions above the stop are no range
        if (first > motion.positions() - 3) {
            return;
        }
        try {
            pairs(at, upper(at, from, first), first);
        } catch (Refusal refusal) {
            // a stop that leaves no range to move in offers no split
            return;
        }
    }

    private List<Scored> upper(Candidate.Place at, double from, int first) {
        PressTask task = at.ground().task();
        RailStroke stroke = at.stroke().from(from);
        PressMotion motion = at.ground().motion();
        double[] plate = new double[motion.positions() - first];
        for (int i = first; i < motion.positions(); i++) {
            plate[i - first] = motion.plate(i);
        }
        Groundwork ground = Groundwork.of(task, stroke, plate);
        return scored(ground, new Candidate.Place(at.stance(), stroke, ground), first);
    }

    private List<Scored> scored(Groundwork ground, Candidate.Place at, int skipped) {
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
                if (tally.feasible()) {
                    double[] missed = scorer.missed(skipped, loading, laid);
                    Candidate candidate =
                            new Candidate(at, plate, loading.lines(), question.goal(), Candidate.Score.of(tally));
                    keepUndominated(found, new Scored(candidate, missed));
                }
            }
        }
        return found;
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

    private void pairs(Candidate.Place at, List<Scored> uppers, int first) {
        if (uppers.isEmpty()) {
            return;
        }
        double[] least = least(uppers);
        double changeover = (at.ground().motion().plate(first) - at.stroke().bottom())
                / at.stroke().travel();
        List<Scored> lows = byBound(whole, least);
        List<Scored> highs = byBound(uppers, lows.isEmpty() ? least : least(lows));
        for (Scored low : lows) {
            // sorted by their bound: past the first that cannot help, none can
            if (mean(low.missed, least, bar()) >= bar()) {
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
            bound[k] = mean(sets.get(k).missed, ideal, Double.POSITIVE_INFINITY);
            order.add(k);
        }
        order.sort((a, b) -> Double.compare(bound[a], bound[b]));
        List<Scored> sorted = new ArrayList<>();
        for (int k : order) {
            sorted.add(sets.get(k));
        }
        return sorted;
    }

    private static double[] least(List<Scored> uppers) {
        double[] least = uppers.get(0).missed.clone();
        for (Scored upper : uppers) {
            for (int i = 0; i < least.length; i++) {
                if (!(upper.missed[i] >= least[i])) {
                    least[i] = upper.missed[i];
                }
            }
        }
        return least;
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
