package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The search for split ranges: for each seat and foot row, every set over the whole range with every set over the part above
 * each of the real stops. At each position of the whole range the smaller of the two squared shortfalls counts; below the
 * upper set's stop only the whole one's. Limits hold in each set by itself; the upper set keeps the same seconds over its
 * shorter travel.
 *
 * <p>Exact: a pair is skipped only when even the best of all upper sets at every position could not make it one of the best.
 */
final class SplitRange {
    private static final int KEPT = 64;
    private static final double TOUCH = 1e-9;
    private final Question question;
    private final List<PlateSet> plates;
    private final Rejections rejections;
    private final List<Candidate.Place> wholes = new ArrayList<>();
    private final List<SplitSetup> best = new ArrayList<>();
    private int place;
    private int stop;
    private List<Scored> whole;
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

    /**
     * One set with its squared shortfall at each position and moving phase of the whole range: infinite below its own, NaN
     * where no effort is known.
     */
    private record Scored(Candidate candidate, double[] missed) {}

    /** A set over the whole range, and what no pair with it can come under: a mean squared shortfall. */
    private record Bounded(Scored low, double bound) {}

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
        return scored(ground, new Candidate.Place(at.stance(), stroke, ground), new Span(first, stopApart));
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
        List<Scored> found = new ArrayList<>();
        for (int set = 0; set < lines.count(); set++) {
            Groundwork laid = ground.with(lines.series(set));
            for (PlateSet plate : plates) {
                considered++;
                Loading loading = new Loading(plate.total(), lines.lines(set));
                Profile profile = Profile.onGround(laid, loading);
                Verdict verdict = Judge.of(profile, question.goal());
                Candidate candidate = new Candidate(at, plate, loading.lines(), verdict);
                if (verdict.feasible()) {
                    found.add(score(candidate, profile, span));
                } else if (span.skipped == 0 && !question.strategies().contains(lines.strategy(set))) {
                    rejections.passed(candidate);
                }
            }
        }
        return found;
    }

    private Scored score(Candidate candidate, Profile profile, Span span) {
        int n = profile.positions() - span.apart + span.skipped;
        double[] missed = new double[2 * n];
        java.util.Arrays.fill(missed, Double.POSITIVE_INFINITY);
        for (int i = span.skipped; i < n; i++) {
            int own = i - span.skipped + span.apart;
            missed[i] = missed(profile, Phase.LIFTING, own);
            missed[n + i] = missed(profile, Phase.LOWERING, own);
        }
        return new Scored(candidate, missed);
    }

    private double missed(Profile profile, Phase phase, int i) {
        Optional<Limiting> limiting = profile.limiting(question.goal().joints(), phase, i);
        if (limiting.isEmpty()) {
            return Double.NaN;
        }
        double miss = question.goal().target().at(profile.drivingAngle(i))
                - limiting.get().effort();
        return miss > 0 ? miss * miss : 0;
    }

    private void pairs(Candidate.Place at, List<Scored> uppers, double from) {
        if (uppers.isEmpty()) {
            return;
        }
        double changeover = (from - at.stroke().bottom()) / at.stroke().travel();
        for (Bounded bounded : mostHopefulFirst(uppers)) {
            // the rest cannot come under the bar either
            if (bounded.bound >= bar()) {
                return;
            }
            Scored low = bounded.low;
            for (Scored high : uppers) {
                double mean = mean(low.missed, high.missed, bar());
                if (mean < bar()) {
                    keep(new SplitSetup(low.candidate, high.candidate, changeover, Math.sqrt(mean)));
                }
            }
        }
    }

    private List<Bounded> mostHopefulFirst(List<Scored> uppers) {
        double[] least = least(uppers);
        List<Bounded> found = new ArrayList<>();
        for (Scored low : whole) {
            found.add(new Bounded(low, bound(low.missed, least)));
        }
        found.sort(Comparator.comparingDouble(Bounded::bound));
        return found;
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

    /** No more than the mean of this set with any upper one: the least sum over the most places that could count. */
    private static double bound(double[] low, double[] least) {
        double sum = 0;
        int most = 0;
        for (int i = 0; i < low.length; i++) {
            boolean known = !Double.isNaN(low[i]);
            sum += known ? Math.min(low[i], least[i]) : 0;
            most += known || least[i] < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        return most == 0 ? Double.POSITIVE_INFINITY : sum / most;
    }

    /**
     * Mean over what is known of the smaller of two squared shortfalls; where one is not known the other counts. Infinite
     * once it cannot come under the bar.
     */
    private static double mean(double[] low, double[] high, double bar) {
        double sum = 0;
        int counted = 0;
        double enough = bar * low.length;
        for (int i = 0; i < low.length && sum <= enough; i++) {
            double smaller = high[i] < low[i] || Double.isNaN(low[i]) ? high[i] : low[i];
            if (smaller < Double.POSITIVE_INFINITY) {
                sum += smaller;
                counted++;
            }
        }
        return counted == 0 || sum > enough ? Double.POSITIVE_INFINITY : sum / counted;
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
