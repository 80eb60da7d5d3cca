package counterpull.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Counts how often intervals hold a truth that is known because the bench was made up: of 2,000 seeded trials 93 to 97 in a hundred
 * must. The short run has fewer trials and so a wider band: four standard deviations of such a count on each side of 95.
 */
public final class Coverage {
    public static final boolean LONG = Boolean.getBoolean("long");
    private final Map<String, int[]> counts = new LinkedHashMap<>();
    private final int trials;

    public Coverage() {
        this(trials());
    }

    /** Of so many trials nearly all must give an answer. */
    public Coverage(int trials) {
        this.trials = trials;
    }

    public static int trials() {
        return trials(100);
    }

    /** So many in the short run, 2,000 in the long one. */
    public static int trials(int shorter) {
        return LONG ? Integer.getInteger("trials", 2000) : shorter;
    }

    /** A generator of its own for each trial; seeds that follow each other would give a first number that does too. */
    public static Random random(String bench, int trial) {
        return new Random(new SplittableRandom(bench.hashCode() * 100_003L + trial).nextLong());
    }

    public void count(String what, Estimate estimate, double truth) {
        count(what, estimate.holds(truth));
    }

    public void count(String what, boolean held) {
        int[] count = counts.computeIfAbsent(what, key -> new int[2]);
        count[0] += held ? 1 : 0;
        count[1]++;
    }

    public double share(String what) {
        int[] count = counts.get(what);
        return count[0] / (double) count[1];
    }

    /** Every interval keeps its promise. */
    public void holds() {
        assertThat(counts).isNotEmpty();
        StringBuilder wrong = new StringBuilder();
        counts.forEach((what, count) -> {
            double off = LONG ? 0.02 : 4 * Math.sqrt(0.95 * 0.05 / count[1]);
            double share = share(what);
            if (Boolean.getBoolean("show")) {
                System.out.printf("%-60s %6.2f %% of %d%n", what, 100 * share, count[1]);
            }
            if (count[1] < trials * 0.98 || Math.abs(share - 0.95) > off) {
                wrong.append(what)
                        .append(": ")
                        .append(share)
                        .append(" of ")
                        .append(count[1])
                        .append('\n');
            }
        });
        assertThat(wrong.toString())
                .as("share of intervals that hold the truth")
                .isEmpty();
    }
}
