package counterpull.bench.machine;

import counterpull.bench.Way;

/**
 * What the scale reads where the stack hangs on nothing: handle, carriage or lever alone, to be taken off.
 *
 * @param way slowly out, or slowly let back
 * @param force N
 */
public record Alone(Way way, double force) {}
