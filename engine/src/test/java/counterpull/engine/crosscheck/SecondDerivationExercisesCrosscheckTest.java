package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.Refusal;
import counterpull.engine.crosscheck.stated.StatedCase;
import counterpull.engine.crosscheck.stated.StatedFile;
import counterpull.engine.crosscheck.stated.StatedNumber;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole exercises against a second derivation that was written in another language: joint torques by Lagrange's equations of the free
 * chain with every derivative taken numerically in 70 digits, pulls by virtual work. The cases differ in movement, limbs, tempo and in
 * everything that can resist; where a contact would be lost both must refuse.
 */
class SecondDerivationExercisesCrosscheckTest {
    /** Of a column's largest value: the file has 13 digits, the engine's arithmetic loses a few more near straight. */
    private static final double CLOSE = 1e-10;

    private static Stream<StatedCase> solved() {
        return StatedFile.read("exercises.txt").stream().filter(one -> !one.refused());
    }

    private static Stream<StatedCase> refused() {
        return StatedFile.read("exercises.txt").stream().filter(StatedCase::refused);
    }

    @ParameterizedTest
    @MethodSource("solved")
    void everyNumberIsTheSame(StatedCase stated) {
        assertThat(differences(stated, stated.task())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("refused")
    void bothRefuse(StatedCase stated) {
        assertThatThrownBy(() -> ExerciseProfile.of(stated.task())).isInstanceOf(Refusal.class);
    }

    @Test
    void theFileHoldsWhatItSays() {
        long numbers = solved().mapToLong(
                        one -> (one.columns().length - 3L) * one.rows().size())
                .sum();
        assertThat(solved().count()).isEqualTo(19);
        assertThat(numbers).isEqualTo(2592);
        assertThat(refused().count()).isEqualTo(5);
    }

    /** A gram of plates more is seen wherever plates are chosen. */
    @Test
    void aGramIsNoticed() {
        List<StatedCase> loaded =
                solved().filter(one -> one.task().exercise().takesPlates()).toList();
        assertThat(loaded).isNotEmpty().allSatisfy(one -> {
            ExerciseTask heavier = one.task().with(one.task().plates() + 0.001);
            assertThat(differences(one, heavier)).isNotEmpty();
        });
    }

    private static List<String> differences(StatedCase stated, ExerciseTask task) {
        ExerciseProfile profile = ExerciseProfile.atPositionsAlone(task);
        List<String> found = new ArrayList<>();
        for (int column = 3; column < stated.columns().length; column++) {
            double allowed = CLOSE * stated.largest(column);
            for (String[] row : stated.rows()) {
                double ours = StatedNumber.of(profile, stated.columns()[column], row);
                if (!(Math.abs(ours - Double.parseDouble(row[column])) <= allowed)) {
                    found.add(stated.columns()[column] + " " + String.join(",", row) + ": " + ours);
                }
            }
        }
        return found;
    }
}
