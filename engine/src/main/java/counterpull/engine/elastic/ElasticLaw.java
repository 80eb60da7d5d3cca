package counterpull.engine.elastic;

/**
 * How hard one strand of a rubber pulls, from its stretch λ = length / natural length, while it lengthens or is held.
 *
 * <p>The contract, for stretch λ (a pure number) up to {@link #largestStretch()}:
 *
 * <ul>
 *   <li>tension T(λ), N, never negative; exactly 0 for λ ≤ 1: rubber cannot push;
 *   <li>slope dT/dλ, N per unit of stretch; 0 for λ &lt; 1, at λ = 1 the slope with which it begins to pull;
 *   <li>energy ∫T dλ from 1, J per metre of natural length; exactly 0 for λ ≤ 1.
 * </ul>
 *
 * <p>A strand of natural length L₀ then has force T(L/L₀), stiffness slope/L₀ and energy L₀ · energy, so that force =
 * dE/dL and stiffness = dF/dL. A stretch that is not a number gives NaN. Past {@link #largestStretch()} the value is NaN,
 * never a guess; past the tested length of a piece, {@link Strand} refuses.
 */
public sealed interface ElasticLaw permits LinearLaw, MooneyRivlin, Ogden, BenchCurve {
    /** Force of one strand, N, while lengthening or held; 0 for stretch ≤ 1. */
    double tension(double stretch);

    /** Rise of the force with stretch, N per unit of stretch; 0 for stretch &lt; 1. */
    double slope(double stretch);

    /** Energy stored since natural length, J per metre of natural length; 0 for stretch ≤ 1. */
    double energy(double stretch);

    /** The largest stretch that the law itself can answer for; infinite for a closed formula. */
    double largestStretch();

    /** The same law pulling so many times as hard at every stretch; factor above zero. */
    ElasticLaw times(double factor);

    /** The law with its numbers, in one line, for a person who asks why. */
    String formula();
}
