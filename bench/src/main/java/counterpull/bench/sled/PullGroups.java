package counterpull.bench.sled;

import counterpull.bench.Way;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Pulls of one way at one load beside each other, compared by medians so that one bad reading does not hide itself. */
final class PullGroups {
    /** Standard deviation over median absolute deviation of a normal distribution. */
    private static final double NORMAL = 1.4826;

    private static final double SCATTERS = 6;
    private static final double SHARE = 0.02;
    private static final int FEWEST = 3;

    private final SledBench bench;
    private final double scatter;

    PullGroups(SledBench bench) {
        this.bench = bench;
        List<Double> all = new ArrayList<>();
        for (double load : bench.loads()) {
            for (Way way : Way.values()) {
                addOffs(group(new Pull(way, load, 0)), all);
            }
        }
        double[] offs = all.stream().mapToDouble(Double::doubleValue).toArray();
        scatter = offs.length == 0 ? 0 : NORMAL * SledReadings.median(offs);
    }

    /** Of an odd number one is the middle itself: its distance of 0 is no scatter. */
    private static void addOffs(double[] group, List<Double> all) {
        if (group.length < FEWEST) {
            return;
        }
        double middle = SledReadings.median(group);
        Arrays.stream(group)
                .map(force -> Math.abs(force - middle))
                .sorted()
                .skip(group.length % 2)
                .forEach(all::add);
    }

    private double[] group(Pull pull) {
        return bench.pulls().stream()
                .filter(other -> other.way() == pull.way() && other.plates() == pull.plates())
                .mapToDouble(Pull::force)
                .toArray();
    }

    /** How far a pull lies from the middle of three or more of its kind, N; 0 where there are fewer. */
    double off(int i) {
        double[] group = group(bench.pulls().get(i));
        return group.length < FEWEST ? 0 : bench.pulls().get(i).force() - SledReadings.median(group);
    }

    /** What the repeats scatter by, N, from the median; 0 where nothing was read three times. */
    double scatter() {
        return scatter;
    }

    /** Further off than this a reading is to be doubted, N. */
    double tolerance() {
        double mean = bench.pulls().stream().mapToDouble(Pull::force).average().orElse(0);
        return Math.max(SCATTERS * scatter, SHARE * mean);
    }
}
