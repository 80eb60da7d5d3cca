/** Sleds and machines in a file of readings: read into the bench's records, and what was found back as lines for a scenario. */
package counterpull.readings.machines;
