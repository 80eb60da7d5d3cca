/**
 * The kinds of movement that a file can ask for: one class reads and writes each, {@link
 * counterpull.scenario.movement.MovementKinds} lists them.
 */
package counterpull.scenario.movement;
