package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
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
    private final Question question;
    private final List<PlateSet> plates;
    private final List<Candidate.Place> wholes = new ArrayList<>();
    private final List<SplitSetup> best = new ArrayList<>();
    private int place;
    private int stop;
    private List<Scored> whole;
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
    private record Scored(Candidate candidate, double[] missed, double sum) {}

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
        List<Scored> found = new ArrayList<>();
        for (int set = 0; set < lines.count(); set++) {
            Groundwork laid = ground.with(lines.series(set));
            for (PlateSet plate : plates) {
                considered++;
                Loading loading = new Loading(plate.total(), lines.lines(set));
                Profile profile = Profile.onGround(laid, loading);
                Verdict verdict = Judge.of(profile, question.goal());
                if (verdict.feasible()) {
                    found.add(score(new Candidate(at, plate, loading.lines(), verdict), profile, skipped));
                }
            }
        }
        return found;
    }

    private Scored score(Candidate candidate, Profile profile, int skipped) {
        int n = profile.positions() + skipped;
        double[] missed = new double[2 * n];
        java.util.Arrays.fill(missed, Double.POSITIVE_INFINITY);
        double sum = 0;
        for (int i = skipped; i < n; i++) {
            for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
                double miss = missed(profile, phase, i - skipped);
                missed[(phase == Phase.LIFTING ? 0 : n) + i] = miss;
                sum += Double.isNaN(miss) ? 0 : miss;
            }
        }
        return new Scored(candidate, missed, sum);
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

    private void pairs(Candidate.Place at, List<Scored> uppers, int first) {
        if (uppers.isEmpty()) {
            return;
        }
        double[] least = least(uppers);
        double changeover = (at.ground().motion().plate(first) - at.stroke().bottom())
                / at.stroke().travel();
        for (Scored low : whole) {
            if (mean(low.missed, least) < bar()) {
                for (Scored high : uppers) {
                    keep(new SplitSetup(
                            low.candidate, high.candidate, changeover, Math.sqrt(mean(low.missed, high.missed))));
                }
            }
        }
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

    /** Mean over what is known of the smaller of two squared shortfalls; where one is not known the other counts. */
    private static double mean(double[] low, double[] high) {
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < low.length; i++) {
            double smaller = high[i] < low[i] || Double.isNaN(low[i]) ? high[i] : low[i];
            if (smaller < Double.POSITIVE_INFINITY) {
                sum += smaller;
                counted++;
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
