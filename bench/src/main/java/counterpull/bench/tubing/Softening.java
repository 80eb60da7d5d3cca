package counterpull.bench.tubing;

import counterpull.bench.Estimate;

/**
 * How much the force fell from the very first stretch to the cycled piece, at the same lengths.
 *
 * @param fall share of the first stretch's force that was lost; above 0 where it softened
 * @param readings of the first stretch that could be compared
 */
public record Softening(Estimate fall, int readings) {}
