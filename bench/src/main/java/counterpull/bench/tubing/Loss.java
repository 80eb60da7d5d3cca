package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.engine.elastic.Unloading;

/**
 * What the rubber keeps on the way back.
 *
 * @param share of the work put in that does not come back, over the lengths that were read both ways; 0 to 1
 * @param from shortest of those lengths, m
 * @param to longest of them, m
 * @param unloading the same as the engine takes it
 */
public record Loss(Estimate share, double from, double to, Unloading unloading) {}
