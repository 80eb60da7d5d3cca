package counterpull.bench.person;

import counterpull.bench.Estimate;

/**
 * What the readings of one end of a range say.
 *
 * @param of the readings
 * @param angle anatomical angle, rad
 * @param scatter of the readings, rad
 * @param detectable smallest change from one visit to the next that is beyond measuring, rad
 */
public record RangeResult(RangeBench of, Estimate angle, Scatter scatter, double detectable) {}
