package counterpull.bench.tubing;

/**
 * One reading: held at a length, what the scale showed. As taken: nothing is checked here, so that every problem can be named at once.
 *
 * @param length of the rubber, m
 * @param force of all strands together, N
 */
public record Pull(double length, double force) {}
