package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * The two-constant law of an incompressible rubber in simple tension.
 *
 * <p>T = A₀ · 2 (λ − λ⁻²)(C₁ + C₂/λ); energy A₀ [C₁(λ² + 2/λ − 3) + C₂(2λ + λ⁻² − 3)] in J per metre of natural length;
 * λ = L/L₀, T = 0 for λ ≤ 1.
 *
 * <p>Good to about twice or three times the natural length; it misses the upturn beyond. Both constants are kept from
 * being negative, since a negative one makes a fit that turns round outside its data.
 *
 * <p>Source: Mooney M 1940, J Appl Phys 11:582; Rivlin RS 1948, Phil Trans R Soc A 241:379; form as in Marckmann &amp;
 * Verron 2006, Rubber Chem Technol 79:835. With C₂ = 0 it is the neo-Hookean law.
 *
 * @param area A₀, cross-section of one strand unstretched, m², above zero
 * @param c1 C₁, Pa, ≥ 0
 * @param c2 C₂, Pa, ≥ 0; not both 0
 */
public record MooneyRivlin(double area, double c1, double c2) implements ElasticLaw {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);

    public MooneyRivlin {
        Require.positive(area, "unstretched cross-section", "m²");
        Require.within(c1, NOT_NEGATIVE, "C1", "Pa");
        Require.within(c2, NOT_NEGATIVE, "C2", "Pa");
        if (c1 + c2 == 0) {
            throw new Refusal(Fault.MUST_BE_POSITIVE, "C1 + C2", 0, 0, "Pa", "C1 and C2 must not both be zero");
        }
    }

    @Override
    public double tension(double stretch) {
        return stretch <= 1 ? 0 : 2 * area * (stretch - 1 / (stretch * stretch)) * (c1 + c2 / stretch);
    }

    @Override
    public double slope(double stretch) {
        double cube = stretch * stretch * stretch;
        return stretch < 1 ? 0 : area * (c1 * (2 + 4 / cube) + 6 * c2 / (cube * stretch));
    }

    @Override
    public double energy(double stretch) {
        // (λ − 1)² taken out of both brackets, so that a small stretch loses no digits.
        double past = stretch - 1;
        double first = c1 * (stretch + 2) / stretch;
        double second = c2 * (2 * stretch + 1) / (stretch * stretch);
        return stretch <= 1 ? 0 : area * past * past * (first + second);
    }

    @Override
    public double largestStretch() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public String formula() {
        return "Mooney–Rivlin: T = A₀ · 2(λ − λ⁻²)(C₁ + C₂/λ), λ = stretch, A₀ = " + Figures.of(area * 1e6)
                + " mm², C₁ = " + Figures.of(c1 / 1e6) + " MPa, C₂ = " + Figures.of(c2 / 1e6) + " MPa";
    }

    @Override
    public ElasticLaw times(double factor) {
        return new MooneyRivlin(area, factor * c1, factor * c2);
    }
}
