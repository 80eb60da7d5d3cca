package counterpull.scenario.problem;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Collects problems while a scenario is read. Keeps the first thousand and counts the rest. */
public final class Problems {
    private static final int KEPT = 1000;
    private static final int SHOWN = 50;

    private final List<Problem> kept = new ArrayList<>();
    private int count;
    private int stumbles;

    /** Adds one. */
    public void add(Problem problem) {
        count++;
        if (kept.size() < KEPT) {
            kept.add(problem);
        }
    }

    /** Notes that something already reported was met again, so that what depends on it is not built. */
    public void stumble() {
        stumbles++;
    }

    /** Grows with each problem and each stumble; equal at two moments if nothing went wrong between them. */
    public int mark() {
        return count + stumbles;
    }

    /** Whether none was found. */
    public boolean isEmpty() {
        return count == 0;
    }

    /** How many were found, those not kept among them. */
    public int count() {
        return count;
    }

    /** Those kept, by line within each file, files in the order in which they were first mentioned. */
    public List<Problem> all() {
        List<String> files =
                kept.stream().map(problem -> problem.place().file()).distinct().toList();
        List<Problem> sorted = new ArrayList<>(kept);
        sorted.sort(Comparator.<Problem>comparingInt(
                        problem -> files.indexOf(problem.place().file()))
                .thenComparingInt(problem -> problem.place().line())
                .thenComparingInt(problem -> problem.place().column()));
        return Collections.unmodifiableList(sorted);
    }

    /** The first fifty as lines, and how many more there are. */
    public List<String> lines() {
        List<String> lines =
                new ArrayList<>(all().stream().limit(SHOWN).map(Problem::line).toList());
        if (count > SHOWN) {
            lines.add("and " + (count - SHOWN) + " more");
        }
        return lines;
    }
}
