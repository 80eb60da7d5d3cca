package counterpull.bench.machine;

/**
 * Where the horn is by tape, to be checked by the pulls.
 *
 * @param radius from the pivot, m
 * @param sd standard uncertainty of it, m
 */
public record HornTape(double radius, double sd) {}
