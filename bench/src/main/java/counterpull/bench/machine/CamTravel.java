package counterpull.bench.machine;

/**
 * How much line a cam had drawn in at an angle of its lever.
 *
 * @param angle of the lever, rad, as for the engine's cam
 * @param line drawn in since some fixed place, m; growing where the stack rises with the lift
 */
public record CamTravel(double angle, double line) {}
