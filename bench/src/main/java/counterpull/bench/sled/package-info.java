/**
 * A sled's bench: what slow pulls along the rail say about carriage and friction. Inputs are taken as they were written down; {@link
 * counterpull.bench.sled.SledBench#answer()} says what is wrong with them, all at once.
 */
package counterpull.bench.sled;
