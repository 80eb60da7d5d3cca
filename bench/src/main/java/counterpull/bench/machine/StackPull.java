package counterpull.bench.machine;

import counterpull.bench.Way;

/**
 * One reading of the scale at the handle of a stack.
 *
 * @param way slowly out (the stack rises), or slowly let back
 * @param printed what is printed at the pin, kg
 * @param added weighed mass laid on the stack besides, kg
 * @param force N
 */
public record StackPull(Way way, double printed, double added, double force) {}
