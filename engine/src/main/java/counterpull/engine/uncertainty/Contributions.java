package counterpull.engine.uncertainty;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which input makes the largest effort unsure, and by how much: each moved by its standard uncertainty to either side, the others as
 * measured (law of propagation of uncertainty, JCGM 100:2008, 5.1.2 and the note to 5.1.3 that takes differences for slopes). In the
 * logarithm, since efforts are mostly products.
 *
 * <p>Where an input cannot be moved to one side (a refusal) the other side alone counts; where to neither, it is named apart. What two
 * inputs do together only is not in it; the bands have it.
 *
 * @param hardest where the largest effort lies with everything as measured
 * @param ranked the inputs, what contributes most first
 * @param immovable inputs that could be moved to neither side
 */
public record Contributions(Hardest hardest, List<Contribution> ranked, List<String> immovable) {
    public Contributions {
        ranked = List.copyOf(ranked);
        immovable = List.copyOf(immovable);
    }

    /** What contributes; empty where no effort of the named joints is known. */
    public static <T extends Trial<T>> Optional<Contributions> of(Doubts<T> doubts, List<Joint> named) {
        return Hardest.of(doubts.nominal().profile(), named)
                .filter(hardest -> hardest.effort() > 0)
                .map(hardest -> new Moves<>(doubts, named, hardest).all());
    }

    /** Standard uncertainty of the largest effort by all inputs together, as a share of it, to first order. */
    public double total() {
        double sum = 0;
        for (Contribution one : ranked) {
            sum += one.variance();
        }
        return Math.sqrt(sum);
    }

    /** Moves one input after the other. */
    private static final class Moves<T extends Trial<T>> {
        private final Doubts<T> doubts;
        private final List<Joint> named;
        private final Hardest hardest;
        private final List<Contribution> found = new ArrayList<>();
        private final List<String> immovable = new ArrayList<>();

        Moves(Doubts<T> doubts, List<Joint> named, Hardest hardest) {
            this.doubts = doubts;
            this.named = named;
            this.hardest = hardest;
        }

        Contributions all() {
            double total = 0;
            for (Doubt<T> doubt : doubts.all()) {
                total += move(doubt);
            }
            List<Contribution> ranked = new ArrayList<>();
            for (Contribution one : found) {
                ranked.add(one.of(total));
            }
            // a stable sort: what contributes the same stays in the order of the inputs
            ranked.sort(Comparator.comparingDouble(Contribution::variance).reversed());
            return new Contributions(hardest, ranked, immovable);
        }

        private double move(Doubt<T> doubt) {
            List<Double> slopes = new ArrayList<>();
            double low = hardest.effort();
            double high = low;
            for (int k = 0; k < doubt.dimensions(); k++) {
                double below = peak(doubt, k, -1);
                double above = peak(doubt, k, 1);
                double slope = slope(below, above);
                if (Double.isNaN(slope)) {
                    immovable.add(doubt.name());
                    return 0;
                }
                slopes.add(slope);
                low = least(low, below, above);
                high = -least(-high, -below, -above);
            }
            Contribution one =
                    new Contribution(doubt.name(), doubt.spread(), doubt.source(), low, high, slopes, 0, doubt.again());
            found.add(doubt.dimensions() == 1 ? one : together(one));
            return one.variance();
        }

        /** Several independent numbers: the ends are those of all of them together. */
        private Contribution together(Contribution one) {
            double factor = Math.exp(one.effect());
            return new Contribution(
                    one.name(),
                    one.spread(),
                    one.source(),
                    hardest.effort() / factor,
                    hardest.effort() * factor,
                    one.slopes(),
                    0,
                    one.again());
        }

        private double slope(double below, double above) {
            double here = Math.log(hardest.effort());
            if (Double.isNaN(below)) {
                return Math.log(above) - here;
            }
            return Double.isNaN(above) ? here - Math.log(below) : (Math.log(above) - Math.log(below)) / 2;
        }

        private static double least(double one, double below, double above) {
            double least = below < one ? below : one;
            return above < least ? above : least;
        }

        /** The largest effort with one of a doubt's numbers moved; NaN where it cannot be. */
        private double peak(Doubt<T> doubt, int which, double by) {
            double[] z = new double[doubt.dimensions()];
            z[which] = by;
            try {
                return Hardest.of(doubt.change().of(doubts.nominal(), z, 0).profile(), named)
                        .map(Hardest::effort)
                        .orElse(Double.NaN);
            } catch (Refusal refused) {
                return Double.NaN;
            }
        }
    }
}
