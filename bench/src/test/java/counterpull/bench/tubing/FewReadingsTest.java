package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The law that is chosen, not one that is known to be right, on three to six readings of a two-constant rubber, nothing stated. */
class FewReadingsTest {
    private static final int TRIALS = 150;

    private static TubingBench bench(Random random, int readings, double[] constants) {
        double natural = 0.3 + 0.3 * random.nextDouble();
        List<Double> taped = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            taped.add(natural + 0.001 * random.nextGaussian());
        }
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            double stretch = 1.2 + 1.2 * i / (readings - 1);
            double force = new TwoConstantShape().force(constants, stretch) + 0.3 * random.nextGaussian();
            pulls.add(new Pull(natural * stretch, force));
        }
        return new TubingBench(
                Piece.tagged("T"),
                new TapeReadings(taped, OptionalDouble.empty()),
                Pulls.stretching(pulls),
                Instruments.NOT_STATED,
                Optional.empty());
    }

    /** Weighed by AICc with less than one reading to spare, the line won in one bench of eight of five readings, 10 N off at 60. */
    @Test
    void aLineIsNotTakenForRubberThatFourReadingsShowToBend() {
        for (int readings = 4; readings <= 6; readings++) {
            Random random = new Random(41 + readings);
            for (int trial = 0; trial < TRIALS; trial++) {
                double[] constants = {4 + 16 * random.nextDouble(), 2 + 18 * random.nextDouble()};
                TubingResult result =
                        bench(random, readings, constants).answer().result().orElseThrow();
                assertThat(result.chosen())
                        .as("%d readings, trial %d", readings, trial)
                        .isNotEqualTo(Family.LINEAR);
            }
        }
    }

    @Test
    void aLineThatNothingCouldBeWeighedAgainstIsSaidToBeOne() {
        double[] constants = {8, 8};
        Answer<TubingResult> three = bench(new Random(3), 3, constants).answer();
        assertThat(three.result().orElseThrow().chosen()).isEqualTo(Family.LINEAR);
        assertThat(three.remarks()).extracting(Remark::code).contains("bend-not-seen");
        Answer<TubingResult> four = bench(new Random(4), 4, constants).answer();
        assertThat(four.remarks()).extracting(Remark::code).doesNotContain("bend-not-seen");
    }
}
