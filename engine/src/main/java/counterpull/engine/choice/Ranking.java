package counterpull.engine.choice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The setups of one strategy that keep every limit, best first: least shortfall over the person's own range, then
 * least peak effort, then fewest pieces to handle, then the order in which the kit lists them. Setups nearer than 1e-12 in shortfall are ties.
 */
public final class Ranking {
    static final double TIE = 1e-12;
    private final Strategy strategy;
    private final List<Candidate> kept = new ArrayList<>();
    // of what is kept now; null until asked for: sorting half a million setups takes seconds
    private List<Candidate> sorted;

    Ranking(Strategy strategy) {
        this.strategy = strategy;
    }

    /** What has been kept so far; later finds do not change it. */
    Ranking soFar() {
        Ranking copy = new Ranking(strategy);
        copy.kept.addAll(kept);
        return copy;
    }

    void add(Candidate candidate) {
        kept.add(candidate);
        sorted = null;
    }

    /** The strategy. */
    public Strategy strategy() {
        return strategy;
    }

    /** How many setups keep every limit. */
    public int size() {
        return kept.size();
    }

    /** All of them, best first. */
    public List<Candidate> all() {
        if (sorted == null) {
            List<Candidate> ordered = new ArrayList<>(kept);
            ordered.sort(Comparator.comparingDouble(Ranking::shortfall)
                    .thenComparingDouble(Ranking::peak)
                    .thenComparingInt(Candidate::pieces));
            sorted = Collections.unmodifiableList(ordered);
        }
        return sorted;
    }

    /** The best few that a person would call different from one another. */
    public List<Candidate> best(int most) {
        List<Candidate> chosen = new ArrayList<>();
        for (Candidate candidate : all()) {
            if (chosen.size() == most) {
                break;
            }
            boolean differs = true;
            for (Candidate before : chosen) {
                differs &= candidate.differsFrom(before);
            }
            if (differs) {
                chosen.add(candidate);
            }
        }
        return chosen;
    }

    /** Every setup whose shortfall is as small as the best one's. */
    public List<Candidate> ties() {
        List<Candidate> ties = new ArrayList<>();
        for (Candidate candidate : all()) {
            if (shortfall(candidate) > shortfall(all().get(0)) + TIE) {
                break;
            }
            ties.add(candidate);
        }
        return ties;
    }

    /** Shortfall to sort by: infinite where no effort is known. */
    static double shortfall(Candidate candidate) {
        // rounding noise must not order ties
        double shortfall = candidate.shortfallOverOwnRange();
        return Double.isNaN(shortfall) ? Double.POSITIVE_INFINITY : Math.rint(shortfall / TIE) * TIE;
    }

    private static double peak(Candidate candidate) {
        double peak = candidate.score().peak();
        return Double.isNaN(peak) ? Double.POSITIVE_INFINITY : peak;
    }
}
