package counterpull.scenario.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The known word that a person most likely meant: the smallest number of letters changed, added, dropped or swapped with
 * their neighbour (optimal string alignment distance), up to a third of the word.
 */
public final class Nearest {
    private static final int LONGEST = 40;

    private Nearest() {}

    /** The nearest of the known words; empty if none is near. The first of equally near ones. */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> distance(folded(word), folded(candidate)) <= allowed(word))
                .min(Comparator.comparingInt(candidate -> distance(folded(word), folded(candidate))));
    }

    /** {@code Did you mean "thigh"?}, or the fallback if no known word is near. */
    public static String hint(String word, Collection<String> known, String fallback) {
        return to(word, known)
                .map(nearest -> "Did you mean \"" + nearest + "\"?")
                .orElse(fallback);
    }

    private static int allowed(String word) {
        return Math.max(1, folded(word).length() / 3);
    }

    private static String folded(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ').strip();
    }

    /** Damerau (1964), in the restricted form that edits no piece twice. */
    static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int step(int[][] cost, String from, String to, int i, int j) {
        int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        int best = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
