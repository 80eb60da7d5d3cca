/**
 * Files of readings, taken with a tape, a scale, an inclinometer or a dynamometer: into the bench's records, units turned into SI and
 * every problem collected; and what the bench found back as text for a scenario. One package a subject.
 */
package counterpull.readings;
