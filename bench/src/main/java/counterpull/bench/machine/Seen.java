package counterpull.bench.machine;

import counterpull.bench.Way;

/**
 * One reading of the scale at a position of the machine.
 *
 * @param way slowly toward the top, or slowly let back
 * @param position m or rad
 * @param size N or N·m, as the bench says
 */
public record Seen(Way way, double position, double size) {}
