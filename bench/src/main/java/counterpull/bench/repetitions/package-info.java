/**
 * Repetitions as evidence: so many repetitions at a known setup, with so many left, say what share of a person's most the setup
 * asks, roughly; the setup's profile says which joint that is, or at least which it may be.
 */
package counterpull.bench.repetitions;
