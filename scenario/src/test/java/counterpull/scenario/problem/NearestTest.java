package counterpull.scenario.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    /** validation: the textbook pairs of edit distance, and the pair that tells the restricted form (3) from the full one (2). */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "saturday, sunday, 3",
        "thigh, thihg, 1",
        "ca, abc, 3",
        "'', abc, 3",
        "abc, abc, 0"
    })
    void countsEdits(String from, String to, int distance) {
        assertThat(Nearest.distance(from, to)).isEqualTo(distance);
    }

    /** crosscheck: the table against the plain recursion that defines it. */
    @Test
    void agreesWithItsDefinition() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            String from = word(random);
            String to = word(random);
            assertThat(Nearest.distance(from, to)).as(from + " " + to).isEqualTo(defined(from, to));
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            word.append((char) ('a' + random.nextInt(3)));
        }
        return word.toString();
    }

    private static int defined(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.length() + b.length();
        }
        int change = a.charAt(0) == b.charAt(0) ? 0 : 1;
        int best = Math.min(
                defined(a.substring(1), b.substring(1)) + change,
                1 + Math.min(defined(a.substring(1), b), defined(a, b.substring(1))));
        boolean swap = a.length() > 1 && b.length() > 1 && a.charAt(0) == b.charAt(1) && a.charAt(1) == b.charAt(0);
        return swap ? Math.min(best, 1 + defined(a.substring(2), b.substring(2))) : best;
    }

    @Test
    void suggestsWhatIsNearAndNothingElse() {
        List<String> known = List.of("thigh", "shank", "foot", "natural length");
        assertThat(Nearest.to("thihg", known)).contains("thigh");
        assertThat(Nearest.to("Shank", known)).contains("shank");
        assertThat(Nearest.to("natural_length", known)).contains("natural length");
        assertThat(Nearest.to("colour", known)).isEmpty();
        assertThat(Nearest.to("x".repeat(100_000), known)).isEmpty();
    }
}
