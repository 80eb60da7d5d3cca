package counterpull.bench.machine;

import counterpull.bench.Way;

/**
 * One reading at a lever.
 *
 * @param way slowly the way it turns while the limb lifts, or slowly let back
 * @param angle of the lever, pivot → pad, from straight ahead, rad counter-clockwise as seen with the person facing right: 0 level with the
 *     pad in front, −π/2 hanging down
 * @param plates on its horn, kg
 * @param size N square to the lever, or N·m, as the bench says
 */
public record LeverReading(Way way, double angle, double plates, double size) {}
