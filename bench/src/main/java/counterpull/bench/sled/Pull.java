package counterpull.bench.sled;

import counterpull.bench.Way;

/**
 * One reading of the scale that pulls the carriage along the rail.
 *
 * @param way slowly up, or slowly let back
 * @param plates added plates while it was read, kg, as printed or weighed
 * @param force N
 */
public record Pull(Way way, double plates, double force) {}
