package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the natural length adds to a fit: its own scatter where that contradicts the tape, and its share of what the readings chose. */
class NaturalLengthTest {
    private static final double[] LENGTHS = {0.54, 0.63, 0.72, 0.81, 0.90, 0.99};

    private static final double[] FORCES = {13.0, 22.5, 28.3, 33.4, 38.3, 41.8};

    private static TubingBench bench(Instruments instruments, double strands, double[] forces, Double... natural) {
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < forces.length; i++) {
            pulls.add(new Pull(LENGTHS[i], forces[i]));
        }
        return new TubingBench(
                new Piece("T", Optional.empty(), strands, Preparation.CYCLED),
                new TapeReadings(List.of(natural), OptionalDouble.empty()),
                Pulls.stretching(pulls),
                instruments,
                Optional.empty());
    }

    private static Instruments stated(double tape) {
        return new Instruments(OptionalDouble.of(0.3), OptionalDouble.of(tape));
    }

    /** Three readings 2 cm apart cannot be sure to 2 mm / √3 = 1.2 mm: s/√3 = 11.5 mm counts, and it is said. */
    @Test
    void readingsFarApartAreNotAsSureAsTheTape() {
        Answer<TubingResult> answer =
                bench(stated(0.002), 1, FORCES, 0.45, 0.47, 0.43).answer();
        assertThat(answer.result().orElseThrow().lengths().tape().standardError())
                .isCloseTo(0.02 / Math.sqrt(3), within(1e-12));
        assertThat(answer.remarks()).extracting(Remark::code).contains("repeats-apart");
    }

    /** Scatter of half the tape's or twice is chance: the tape's word stands, and nothing is said. */
    @Test
    void readingsThatScatterByChanceLeaveTheTape() {
        for (double apart : new double[] {0.001, 0.004}) {
            Answer<TubingResult> answer = bench(stated(0.002), 1, FORCES, 0.45, 0.45 + apart, 0.45 - apart)
                    .answer();
            assertThat(answer.result().orElseThrow().lengths().tape().standardError())
                    .isCloseTo(0.002 / Math.sqrt(3), within(1e-12));
            assertThat(answer.remarks()).extracting(Remark::code).doesNotContain("repeats-apart");
        }
    }

    /**
     * Two strands, five pulls, nothing stated. The numbers that each law took, as the trace of its hat matrix by a second derivation in
     * another language (finite differences, noise iterated): linear 1.00098, Mooney–Rivlin 2.1796. Laws that are weighed against each other are
     * counted alike; tolerance: their noise divides by slightly different numbers.
     */
    @Test
    void everyLawsNumbersAreCountedAlike() {
        double kilogram = 9.80665;
        TubingBench bench = new TubingBench(
                new Piece("T2", Optional.empty(), 2, Preparation.CYCLED),
                new TapeReadings(List.of(0.448, 0.451, 0.450), OptionalDouble.empty()),
                Pulls.stretching(List.of(
                        new Pull(0.54, 5.7 * kilogram),
                        new Pull(0.63, 9.2 * kilogram),
                        new Pull(0.72, 11.6 * kilogram),
                        new Pull(0.90, 15.6 * kilogram),
                        new Pull(0.99, 17.2 * kilogram))),
                Instruments.NOT_STATED,
                Optional.empty());
        TubingResult result = bench.answer().result().orElseThrow();
        assertThat(result.law().score().aicc())
                .as("five readings are too few for AICc")
                .isEmpty();
        double[] numbers = {1.00098, 2.1796};
        for (int k = 0; k < numbers.length; k++) {
            assertThat(result.laws().get(k).score().numbers())
                    .as("%s", result.laws().get(k).family())
                    .isCloseTo(numbers[k], within(0.02));
        }
        assertThat(result.chosen()).isEqualTo(Family.MOONEY_RIVLIN);
    }
}
