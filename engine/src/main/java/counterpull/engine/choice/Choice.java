package counterpull.engine.choice;

import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param question what it was asked
 * @param rankings the setups that keep every limit, by strategy, in the strategies' order
 * @param splits at most 64 split ranges that keep every limit, best first; the first is proved best, pairs that another one
 *     matches at every position are left out
 * @param rejections what stopped the rest
 * @param extent how much was looked at
 */
public record Choice(
        Question question, List<Ranking> rankings, List<SplitSetup> splits, Rejections rejections, Extent extent) {
    public Choice {
        rankings = List.copyOf(rankings);
        splits = List.copyOf(splits);
    }

    /**
     * How much was looked at.
     *
     * @param considered setups judged
     * @param complete whether that was all of them: then what comes first is proved best
     */
    public record Extent(int considered, boolean complete) {}

    /** Whether any single setup keeps every limit. */
    public boolean feasible() {
        return best().isPresent();
    }

    /** The best single setup over all strategies: least shortfall, ties in the strategies' order. */
    public Optional<Candidate> best() {
        Candidate best = null;
        for (Ranking ranking : rankings) {
            for (Candidate first : ranking.best(1)) {
                if (best == null || Ranking.shortfall(first) < Ranking.shortfall(best) - Ranking.TIE) {
                    best = first;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The ranking of one strategy, if it was asked for. */
    public Optional<Ranking> ranking(Strategy strategy) {
        return rankings.stream().filter(r -> r.strategy() == strategy).findFirst();
    }
}
