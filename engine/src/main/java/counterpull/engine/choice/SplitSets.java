package counterpull.engine.choice;

import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import java.util.ArrayList;
import java.util.List;

/**
 * Scores every set of one place for a split range and keeps those that no other one beats at every position; in steps, so
 * that a search can stop between them.
 */
final class SplitSets {
    private final Question question;
    private final List<PlateSet> plates;
    private final Candidate.Place place;
    private final Span span;
    private final Rejections rejections;
    private final LinesOnGround lines;
    private final Scorer scorer;
    private final Tally tally = new Tally();
    private final List<Scored> kept = new ArrayList<>();
    private Groundwork laid;
    private int set;
    private int plate;

    /**
     * Nothing scored yet.
     *
     * @param question what is searched
     * @param plates every total of plates
     * @param at place and span
     * @param rejections where sets are written down that no other strategy judges
     */
    SplitSets(Question question, List<PlateSet> plates, Part at, Rejections rejections) {
        this.question = question;
        this.plates = plates;
        this.rejections = rejections;
        place = at.place;
        span = at.span;
        // which lines cannot hang here is said by the other strategies
        lines = LinesOnGround.of(question.kit(), place.ground(), new Rejections());
        scorer = new Scorer(place.ground(), question.goal());
    }

    /** One set with its squared shortfall at each position and moving phase of the whole range. */
    record Scored(Candidate candidate, double[] missed) {}

    /** A part of the whole range and where it is worked from. */
    record Part(Candidate.Place place, Span span) {}

    /**
     * Which of the whole range's positions a set covers.
     *
     * @param skipped how many of them lie below it
     * @param apart 1 where the set is also looked at from a stop between two of them, else 0
     */
    record Span(int skipped, int apart) {}

    /** Scores up to {@code budget} sets; answers how many it did, fewer only at the end. */
    int advance(int budget) {
        int done = 0;
        while (done < budget && !finished()) {
            score();
            done++;
        }
        return done;
    }

    boolean finished() {
        return set >= lines.count();
    }

    List<Scored> kept() {
        return kept;
    }

    private void score() {
        if (laid == null) {
            laid = place.ground().with(lines.series(set));
            scorer.hang(lines.series(set));
        }
        Loading loading = new Loading(plates.get(plate).total(), lines.lines(set));
        scorer.score(loading, laid, tally);
        if (tally.feasible()) {
            keep(new Scored(candidate(loading), scorer.missed(span.skipped, span.apart, loading, laid)));
        } else if (span.skipped == 0 && !question.strategies().contains(lines.strategy(set))) {
            reject(loading);
        }
        plate++;
        if (plate >= plates.size()) {
            plate = 0;
            laid = null;
            set++;
        }
    }

    // a whole set that no other strategy has judged already
    private void reject(Loading loading) {
        if (rejections.passed(tally)) {
            rejections.nearest(candidate(loading));
        }
    }

    private Candidate candidate(Loading loading) {
        return new Candidate(place, plates.get(plate), loading.lines(), question.goal(), Candidate.Score.of(tally));
    }

    private void keep(Scored next) {
        for (Scored other : kept) {
            if (dominates(other.missed, next.missed)) {
                return;
            }
        }
        kept.removeIf(other -> dominates(next.missed, other.missed));
        kept.add(next);
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
}
