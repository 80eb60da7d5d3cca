package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;

/**
 * One number of a fitted law.
 *
 * @param symbol as in the law's formula ("C₁", "μ₁", "K")
 * @param estimate SI
 * @param kind a stress where the cross-section is known, else the force that the constant times the cross-section is; or a pure number
 */
public record Constant(String symbol, Estimate estimate, Kind kind) {}
