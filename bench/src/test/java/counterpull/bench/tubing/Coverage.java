package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import java.util.Map;
import java.util.TreeMap;

/** Counts how often 95 % intervals hold the truth. */
final class Coverage {
    private final Map<String, int[]> counts = new TreeMap<>();

    void add(String what, Estimate estimate, double truth) {
        int[] count = counts.computeIfAbsent(what, name -> new int[2]);
        count[0]++;
        count[1] += estimate.holds(truth) ? 1 : 0;
    }

    /** Share of intervals that hold the truth, for each number. */
    Map<String, Double> shares() {
        Map<String, Double> shares = new TreeMap<>();
        counts.forEach((what, count) -> shares.put(what, count[1] / (double) count[0]));
        return shares;
    }

    Map<String, Integer> trials() {
        Map<String, Integer> trials = new TreeMap<>();
        counts.forEach((what, count) -> trials.put(what, count[0]));
        return trials;
    }
}
