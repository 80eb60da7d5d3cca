/**
 * Rubber on the bench: lengths and forces while it is stretched and let go into a law with a band, what is lost, how much longer it
 * stayed, and when it is due again. Forces are read for all strands together; every law is of one strand.
 */
package counterpull.bench.tubing;
