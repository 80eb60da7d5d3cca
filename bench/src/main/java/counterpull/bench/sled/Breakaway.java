package counterpull.bench.sled;

/**
 * The largest reading of the scale as the carriage starts to move up.
 *
 * @param plates added plates while it was read, kg
 * @param force N, the whole pull
 */
public record Breakaway(double plates, double force) {}
