package counterpull.bench.repetitions;

/**
 * One joint action of one limb that may have limited a set.
 *
 * @param logEffort natural logarithm of the effort at its hardest place with the curve as it stands
 * @param ownSd standard deviation of the log scale of its strength that is its own
 */
record Contestant(double logEffort, double ownSd) {}
