package counterpull.engine.profile;

import counterpull.engine.load.Carriage;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Stops;

/**
 * The machine: its rail, what rides on it, and where its bottom stop can be set.
 *
 * @param rail the rail
 * @param carriage carriage, counterweight and friction
 * @param stops the bottom stops
 */
public record Sled(Rail rail, Carriage carriage, Stops stops) {}
