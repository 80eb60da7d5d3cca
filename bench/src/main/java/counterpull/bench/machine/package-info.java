/**
 * Machines' benches: one that nobody knows, a weight stack with its line, a lever, a cam. Inputs are taken as they were written down;
 * {@code answer()} of each says what is wrong with them, all at once.
 */
package counterpull.bench.machine;
