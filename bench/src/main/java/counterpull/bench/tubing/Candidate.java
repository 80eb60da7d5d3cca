package counterpull.bench.tubing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One kind of law as it was tried.
 *
 * @param family which
 * @param constants its numbers with their intervals; empty where it could not be used, and for the smooth curve
 * @param residuals measured less fitted force of one strand, N, in order of rising length; empty where it could not be used
 * @param score how well it serves and how few numbers it takes
 * @param refused why it cannot be used; empty where it can
 */
public record Candidate(Family family, List<Constant> constants, List<Double> residuals, Score score, String refused) {
    /**
     * Two ways to weigh a law against its numbers; smaller is better.
     *
     * @param aicc corrected Akaike criterion (Hurvich CM and Tsai C-L 1989, Biometrika 76:297): n ln(RSS/n), or χ² where the noise is
     *     stated, + 2K + 2K(K+1)/(n−K−1); a scatter that is judged counts in K; empty for too few readings
     * @param crossValidation each reading as the others foretell it, root of the mean square, N; empty where that cannot be done
     * @param numbers how many numbers the readings chose
     */
    public record Score(OptionalDouble aicc, OptionalDouble crossValidation, double numbers) {
        static final Score NONE = new Score(OptionalDouble.empty(), OptionalDouble.empty(), Double.NaN);
    }

    public Candidate {
        constants = List.copyOf(constants);
        residuals = List.copyOf(residuals);
    }

    static Candidate refused(Family family, String why) {
        return new Candidate(family, List.of(), List.of(), Score.NONE, why);
    }

    /** Whether it could be fitted. */
    public boolean usable() {
        return refused.isEmpty();
    }

    /** Root of the mean square of what is left over, N; NaN where it could not be used. */
    public double rms() {
        return Math.sqrt(
                residuals.stream().mapToDouble(each -> each * each).average().orElse(Double.NaN));
    }
}
