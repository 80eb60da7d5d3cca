/** Least squares with limits and with outside knowledge, on a general-purpose library's Levenberg–Marquardt. */
package counterpull.bench.fit;
