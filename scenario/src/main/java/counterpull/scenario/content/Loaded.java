package counterpull.scenario.content;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.profile.Loading;
import java.util.List;

/**
 * What is on the machine today.
 *
 * @param plates plates
 * @param lines elastic lines
 */
public record Loaded(Plates plates, List<ElasticLine> lines) {
    public Loaded {
        lines = List.copyOf(lines);
    }

    /** Nothing. */
    public static Loaded nothing() {
        return new Loaded(new Plates(List.of(), List.of(), List.of()), List.of());
    }

    /**
     * The masses of single plates, kg.
     *
     * @param left on the left horn
     * @param right on the right horn
     * @param middle on a middle horn
     */
    public record Plates(List<Double> left, List<Double> right, List<Double> middle) {
        public Plates {
            left = List.copyOf(left);
            right = List.copyOf(right);
            middle = List.copyOf(middle);
        }

        /** All together, kg. */
        public double total() {
            return sum(left) + sum(right) + sum(middle);
        }

        /** How much more one side carries than the other, kg, zero or more. */
        public double unevenness() {
            return Math.abs(sum(left) - sum(right));
        }

        private static double sum(List<Double> masses) {
            return masses.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    /** As the engine takes it. */
    public Loading loading() {
        return new Loading(plates.total(), lines);
    }
}
