package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * One term of {@link Ogden}'s law.
 *
 * @param mu μ, Pa; of the sign of α
 * @param alpha α, a pure number, not 0; μα &gt; 0, so that the term pulls at every stretch above 1
 */
public record OgdenTerm(double mu, double alpha) {
    public OgdenTerm {
        Require.finite(mu, "mu", "Pa");
        Require.finite(alpha, "alpha", "");
        if (!(mu * alpha > 0)) {
            throw new Refusal(
                    Fault.MUST_BE_POSITIVE, "mu times alpha", mu * alpha, 0, "Pa", "mu times alpha must be above zero");
        }
    }

    /** Stress on the unstretched cross-section, Pa. */
    double stress(double stretch) {
        return mu * (Math.pow(stretch, alpha - 1) - Math.pow(stretch, -alpha / 2 - 1));
    }

    /** Rise of that stress with stretch, Pa. */
    double slope(double stretch) {
        return mu * ((alpha - 1) * Math.pow(stretch, alpha - 2) + (alpha / 2 + 1) * Math.pow(stretch, -alpha / 2 - 2));
    }

    /** Energy stored in a unit of volume, J/m³. */
    double energy(double stretch) {
        // expm1 keeps the digits that λ^α + 2λ^(−α/2) − 3 would lose near natural length.
        double log = Math.log(stretch);
        return mu / alpha * (Math.expm1(alpha * log) + 2 * Math.expm1(-alpha / 2 * log));
    }
}
