/**
 * What a trace of force over time says: rest, efforts, and of each its peak, its steadiest second, its onset and how fast it rises. Pure
 * functions over an immutable {@link counterpull.bench.trace.Trace}; between two samples the force is taken to run straight, and every mean
 * is the exact integral of that line, whatever the spacing of the samples.
 */
package counterpull.bench.trace;
