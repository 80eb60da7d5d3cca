package counterpull.engine.elastic;

import counterpull.engine.Require;

/**
 * A strand that pulls in proportion to how far it is past its natural length.
 *
 * <p>T = K (λ − 1), K in N per unit of stretch, λ = L/L₀; T = 0 for λ ≤ 1. Energy K (λ − 1)²/2 in J per metre of natural
 * length.
 *
 * <p>Valid only where it was measured: rubber is steeper at first and again near its end (tubing was found linear beyond
 * 50 % elongation by Patterson et al. 2001, Phys Ther 81:1437). Source: Hooke's law; common practice for a spring.
 *
 * @param modulus K, N per unit of stretch, above zero: stiffness × natural length
 */
public record LinearLaw(double modulus) implements ElasticLaw {
    public LinearLaw {
        Require.positive(modulus, "stiffness times natural length", "N");
    }

    /**
     * The law of a strand with a measured stiffness.
     *
     * @param stiffness of that strand, N/m, above zero
     * @param naturalLength of that strand, m, above zero
     */
    public static LinearLaw ofStiffness(double stiffness, double naturalLength) {
        Require.positive(stiffness, "stiffness", "N/m");
        Require.positive(naturalLength, "natural length", "m");
        return new LinearLaw(stiffness * naturalLength);
    }

    @Override
    public double tension(double stretch) {
        return stretch <= 1 ? 0 : modulus * (stretch - 1);
    }

    @Override
    public double slope(double stretch) {
        if (stretch < 1) {
            return 0;
        }
        return Double.isNaN(stretch) ? Double.NaN : modulus;
    }

    @Override
    public double energy(double stretch) {
        return stretch <= 1 ? 0 : modulus * (stretch - 1) * (stretch - 1) / 2;
    }

    @Override
    public double largestStretch() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public String formula() {
        return "linear: T = " + Figures.of(modulus) + " N × (stretch − 1)";
    }

    @Override
    public ElasticLaw times(double factor) {
        return new LinearLaw(factor * modulus);
    }
}
