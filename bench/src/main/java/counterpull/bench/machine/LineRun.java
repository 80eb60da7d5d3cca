package counterpull.bench.machine;

/**
 * How far the handle was drawn out and how far the stack rose for it.
 *
 * @param way of the handle along its line, m
 * @param rise of the stack, m
 */
public record LineRun(double way, double rise) {}
