package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.load.Carriage;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The search over a kit: every place (seat × foot row × stop), every set of lines that makes sense there and every total of
 * plates is judged by its full profile, so that what it returns is exact. It is a resumable step: threads, progress and
 * cancelling live outside; {@link #result()} answers at any time with what has been seen so far.
 */
public final class Search {
    private final Question question;
    private final Rejections rejections = new Rejections();
    private final Map<Strategy, Ranking> rankings = new EnumMap<>(Strategy.class);
    private final List<Candidate.Place> places;
    private final List<PlateSet> plates;
    private final Tally tally = new Tally();
    private LinesOnGround lines;
    private Scorer scorer;
    private Groundwork ground;
    private SplitRange split;
    private int place;
    private int set;
    private int plate;
    private int considered;

    /** A search that has not begun. */
    public Search(Question question) {
        this.question = question;
        Carriage carriage = question.task().sled().carriage();
        places = Places.all(question, rejections);
        plates = PlateSet.within(question.kit(), carriage.mostPlates());
        for (Strategy strategy : question.strategies()) {
            if (strategy != Strategy.SPLIT_RANGE) {
                rankings.put(strategy, new Ranking(strategy));
            }
        }
    }

    /**
     * Goes on for about {@code budget} setups.
     *
     * @param budget how many setups to judge, 1 or more
     * @return whether there is more to do
     */
    public boolean advance(int budget) {
        Require.positive(budget, "setups to judge at once", "");
        for (int done = 0; done < budget && place < places.size(); done++) {
            step();
        }
        if (place < places.size()) {
            return true;
        }
        return question.strategies().contains(Strategy.SPLIT_RANGE)
                && splitting().advance(budget);
    }

    private SplitRange splitting() {
        if (split == null) {
            split = new SplitRange(question, places, plates, rejections);
        }
        return split;
    }

    private void step() {
        if (lines == null) {
            lines = LinesOnGround.of(question.kit(), places.get(place).ground(), rejections);
            scorer = new Scorer(places.get(place).ground(), question.goal());
        }
        if (ground == null) {
            ground = places.get(place).ground().with(lines.series(set));
            scorer.hang(lines.series(set));
        }
        Ranking ranking = rankings.get(lines.strategy(set));
        if (ranking != null) {
            judge(ranking);
        }
        next(ranking == null);
    }

    private void judge(Ranking ranking) {
        Loading loading = new Loading(plates.get(plate).total(), lines.lines(set));
        scorer.score(loading, ground, tally);
        considered++;
        if (tally.feasible()) {
            ranking.add(candidate(loading));
        } else if (rejections.passed(tally)) {
            rejections.nearest(candidate(loading));
        }
    }

    private Candidate candidate(Loading loading) {
        return new Candidate(
                places.get(place), plates.get(plate), loading.lines(), question.goal(), Candidate.Score.of(tally));
    }

    private void next(boolean wholeSet) {
        plate++;
        if (wholeSet || plate >= plates.size()) {
            plate = 0;
            ground = null;
            set++;
        }
        if (set >= lines.count()) {
            set = 0;
            lines = null;
            place++;
        }
    }

    /** How far it is. */
    public Progress progress() {
        int pairs = split == null ? 0 : split.considered();
        return new Progress(considered + pairs, place, places.size());
    }

    /**
     * How far a search is.
     *
     * @param considered setups judged so far, both halves of split ranges included
     * @param placesDone seat × foot row × stop combinations finished
     * @param places how many of them there are
     */
    public record Progress(int considered, int placesDone, int places) {}

    /** How far the split ranges are; empty before they begin, which is once every single setup is judged. */
    public Optional<Splits> splits() {
        return Optional.ofNullable(split).map(SplitRange::progress);
    }

    /**
     * How far the split ranges are.
     *
     * @param done seat × foot row combinations finished
     * @param all how many of them there are
     */
    public record Splits(int done, int all) {}

    /** What has been found so far; complete once {@link #advance} has returned false. */
    public Choice result() {
        List<Ranking> found = new ArrayList<>();
        for (Ranking ranking : rankings.values()) {
            found.add(ranking.soFar());
        }
        List<SplitSetup> pairs = split == null ? List.of() : split.best();
        boolean complete = place >= places.size()
                && (!question.strategies().contains(Strategy.SPLIT_RANGE) || split != null && split.finished());
        return new Choice(
                question,
                found,
                pairs,
                rejections.soFar(),
                new Choice.Extent(progress().considered(), complete));
    }
}
