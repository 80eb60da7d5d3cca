package counterpull.engine.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Plates that make up one total, on the machine as it takes them.
 *
 * @param total kg of all plates together
 * @param counts how many of each kind of the kit, in the kit's order
 */
public record PlateSet(double total, List<Integer> counts) {
    private static final double SAME = 1e-6;

    public PlateSet {
        counts = List.copyOf(counts);
    }

    /** How many plates are handled. */
    public int pieces() {
        int sum = 0;
        for (int count : counts) {
            sum += count;
        }
        return sum;
    }

    /**
     * Every total that the kit's plates make within the machine's rating, lightest first, each with the fewest plates that
     * make it.
     *
     * @param kit the plates on hand
     * @param most the machine's rating, kg
     */
    public static List<PlateSet> within(Kit kit, double most) {
        List<PlateSet> sets = new ArrayList<>();
        sets.add(new PlateSet(0, List.of()));
        for (PlateKind kind : kit.plates()) {
            sets = extended(sets, kind, kit.platesAtOnce(), most);
        }
        return sets;
    }

    private static List<PlateSet> extended(List<PlateSet> sets, PlateKind kind, int atOnce, double most) {
        // totals nearer than a milligram are the same total
        TreeMap<Double, PlateSet> best = new TreeMap<>();
        for (PlateSet set : sets) {
            for (int count = 0; count <= kind.count(); count += atOnce) {
                double total = set.total + count * kind.mass();
                if (total <= most + SAME) {
                    List<Integer> counts = new ArrayList<>(set.counts);
                    counts.add(count);
                    keepFewest(best, new PlateSet(total, counts));
                }
            }
        }
        return new ArrayList<>(best.values());
    }

    private static void keepFewest(TreeMap<Double, PlateSet> best, PlateSet candidate) {
        Double near = best.ceilingKey(candidate.total - SAME);
        if (near == null || near > candidate.total + SAME) {
            best.put(candidate.total, candidate);
        } else if (candidate.pieces() < best.get(near).pieces()) {
            best.put(near, new PlateSet(near, candidate.counts));
        }
    }
}
