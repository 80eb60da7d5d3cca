/** Pieces of rubber: from a file of readings to the bench, and what was found to a scenario. */
package counterpull.readings.rubber;
