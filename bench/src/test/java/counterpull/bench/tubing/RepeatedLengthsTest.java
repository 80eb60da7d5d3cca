package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same few lengths read again and again, which is how people are told to read: an answer, whatever the scatter. */
class RepeatedLengthsTest {
    private static final double[] OFF = {0, 0.4, -0.3};

    private static Answer<TubingResult> answer(int lengths, double scatter, List<Double> natural) {
        List<Pull> pulls = new ArrayList<>();
        for (double off : OFF) {
            for (int i = 0; i < lengths; i++) {
                double length = 0.55 + 0.35 * i / Math.max(1, lengths - 1);
                pulls.add(new Pull(length, Math.round(60 * (length - 0.45)) + scatter * off));
            }
        }
        return new TubingBench(
                        Piece.tagged("T1"),
                        new TapeReadings(natural, OptionalDouble.empty()),
                        Pulls.stretching(pulls),
                        Instruments.NOT_STATED,
                        Optional.empty())
                .answer();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void equalReadings(int lengths) {
        assertThat(answer(lengths, 0, List.of(0.45)).result()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void scatteredReadings(int lengths) {
        assertThat(answer(lengths, 1, List.of(0.45)).result()).isPresent();
    }

    @Test
    void threeNaturalLengthsThatAgreeAreNotAskedForAgain() {
        assertThat(answer(4, 1, Collections.nCopies(3, 0.45)).remarks())
                .filteredOn(remark -> remark.code().equals("natural-length-once"))
                .singleElement()
                .extracting(Remark::inSi)
                .asString()
                .contains("agree to the last digit")
                .doesNotContain("three times");
    }
}
