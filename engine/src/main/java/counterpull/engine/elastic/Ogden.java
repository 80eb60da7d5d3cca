package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Ogden's law of an incompressible rubber in simple tension, any number of terms.
 *
 * <p>T = A₀ Σ μᵢ(λ^(αᵢ−1) − λ^(−αᵢ/2−1)); energy A₀ Σ (μᵢ/αᵢ)(λ^αᵢ + 2λ^(−αᵢ/2) − 3) in J per metre of natural length; λ =
 * L/L₀, T = 0 for λ ≤ 1; μᵢαᵢ &gt; 0 for each term.
 *
 * <p>Follows natural rubber to about seven times its length with three terms; outside the data it was fitted to it is an
 * extrapolation. Small-strain shear modulus ½ Σ μᵢαᵢ, Young's modulus three times that.
 *
 * <p>Source: Ogden RW 1972, Proc R Soc A 326:565–584. His constants for Treloar's rubber are in kgf/cm² (6.3, 0.012,
 * −0.1); the usual set in MPa (0.63, 0.0012, −0.01) rounds 0.0980665 to 0.1 and so is 2 % high.
 *
 * @param area A₀, cross-section of one strand unstretched, m², above zero
 * @param terms at least one
 */
public record Ogden(double area, List<OgdenTerm> terms) implements ElasticLaw {
    public Ogden {
        Require.positive(area, "unstretched cross-section", "m²");
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw new Refusal(Fault.EMPTY_RANGE, "terms of the law", 0, 1, "", "the law must have at least one term");
        }
    }

    /** The same from two lists of equal length, mu in Pa. */
    public Ogden(double area, double[] mu, double[] alpha) {
        this(area, paired(mu, alpha));
    }

    private static List<OgdenTerm> paired(double[] mu, double[] alpha) {
        if (mu.length != alpha.length) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "count of alpha",
                    alpha.length,
                    mu.length,
                    "",
                    "every mu must have one alpha");
        }
        List<OgdenTerm> terms = new ArrayList<>();
        for (int i = 0; i < mu.length; i++) {
            terms.add(new OgdenTerm(mu[i], alpha[i]));
        }
        return terms;
    }

    @Override
    public double tension(double stretch) {
        if (stretch <= 1) {
            return 0;
        }
        double stress = 0;
        for (int i = 0; i < terms.size(); i++) {
            stress += terms.get(i).stress(stretch);
        }
        return area * stress;
    }

    @Override
    public double slope(double stretch) {
        if (stretch < 1) {
            return 0;
        }
        double slope = 0;
        for (int i = 0; i < terms.size(); i++) {
            slope += terms.get(i).slope(stretch);
        }
        return area * slope;
    }

    @Override
    public double energy(double stretch) {
        if (stretch <= 1) {
            return 0;
        }
        double energy = 0;
        for (int i = 0; i < terms.size(); i++) {
            energy += terms.get(i).energy(stretch);
        }
        return area * energy;
    }

    @Override
    public double largestStretch() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public String formula() {
        StringBuilder line = new StringBuilder("Ogden: T = A₀ Σ μ(λ^(α−1) − λ^(−α/2−1)), λ = stretch, A₀ = ");
        line.append(Figures.of(area * 1e6)).append(" mm²");
        for (OgdenTerm term : terms) {
            line.append(", μ = ").append(Figures.of(term.mu() / 1e6)).append(" MPa with α = ");
            line.append(Figures.of(term.alpha()));
        }
        return line.toString();
    }

    @Override
    public ElasticLaw times(double factor) {
        return new Ogden(factor * area, terms);
    }
}
