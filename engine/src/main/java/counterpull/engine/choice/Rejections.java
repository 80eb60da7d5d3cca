package counterpull.engine.choice;

import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What stopped the setups that failed: how many each limit stopped, the nearest miss, and what could not be built at all.
 * Filled by the search while it runs.
 */
public final class Rejections {
    private final int[] stopped = new int[LimitKind.values().length];
    private final TreeMap<String, Integer> unbuildable = new TreeMap<>();
    private final TreeMap<String, Refusal> refusals = new TreeMap<>();
    private Candidate nearest;

    /** Notes a setup that passed a limit; true where it is the nearest miss so far, to be handed in by {@link #nearest}. */
    boolean passed(Tally tally) {
        for (int kind = 0; kind < stopped.length; kind++) {
            if (tally.excess[kind] > Breach.TOUCH) {
                stopped[kind]++;
            }
        }
        return nearest == null || tally.worst() < nearest.score().excess();
    }

    /** What has been written down so far; later rejections do not change it. */
    Rejections soFar() {
        Rejections copy = new Rejections();
        System.arraycopy(stopped, 0, copy.stopped, 0, stopped.length);
        copy.unbuildable.putAll(unbuildable);
        copy.refusals.putAll(refusals);
        copy.nearest = nearest;
        return copy;
    }

    void nearest(Candidate candidate) {
        nearest = candidate;
    }

    void refused(String what, Refusal refusal) {
        unbuildable.merge(what, 1, Integer::sum);
        refusals.putIfAbsent(what, refusal);
    }

    void unfit(String line, LineEffect effect) {
        unbuildable.merge(line + ": " + effect.words(), 1, Integer::sum);
    }

    /** How many setups passed this limit (one setup may pass several). */
    public int stoppedBy(LimitKind kind) {
        return stopped[kind.ordinal()];
    }

    /** The setup that passed its limits by the least, as a share of the limit. */
    public Optional<Candidate> nearestMiss() {
        return Optional.ofNullable(nearest);
    }

    /** What was left out before it was judged, in words, each once. */
    public List<String> leftOut() {
        List<String> words = new ArrayList<>();
        for (String what : unbuildable.keySet()) {
            Refusal refusal = refusals.get(what);
            words.add(refusal == null ? what : what + ": " + refusal.getMessage());
        }
        return words;
    }

    /** The first refusal behind each thing left out, by its words. */
    public Optional<Refusal> refusal(String what) {
        return Optional.ofNullable(refusals.get(what));
    }
}
