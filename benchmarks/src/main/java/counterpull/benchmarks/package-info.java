/** How long the engine takes, against plain code and against a general-purpose library. */
package counterpull.benchmarks;
